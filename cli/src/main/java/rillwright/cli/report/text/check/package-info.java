/**
 * A project file described in sentences. Uses {@code report.check}, {@code report.text} and the
 * solver's network.
 */
package rillwright.cli.report.text.check;
