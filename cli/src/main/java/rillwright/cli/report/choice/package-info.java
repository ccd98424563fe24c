/**
 * Words for pumps tried, used by text, JSON and pictures alike. Uses {@code report.units} and the
 * solver.
 */
package rillwright.cli.report.choice;
