/** The odds for people. Uses {@code report.odds} and the page of {@code report.text}. */
package rillwright.cli.report.text.odds;
