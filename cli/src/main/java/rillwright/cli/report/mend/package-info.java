/** Words of remedies and bounds. Uses {@code study.mend} and {@code report.units}. */
package rillwright.cli.report.mend;
