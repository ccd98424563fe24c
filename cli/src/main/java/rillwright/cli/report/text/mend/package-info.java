/** The page of what would mend a job. Uses {@code report.mend} and {@code report.page}. */
package rillwright.cli.report.text.mend;
