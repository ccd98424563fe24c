/** Writes a page as one HTML file that fetches nothing and runs nothing. */
package rillwright.cli.report.page.html;
