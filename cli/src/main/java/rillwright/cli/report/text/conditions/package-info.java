/** A project in several conditions, for people. Uses {@code report.conditions} and the page. */
package rillwright.cli.report.text.conditions;
