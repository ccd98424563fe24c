/** Writes a page as text for a terminal. */
package rillwright.cli.report.page.terminal;
