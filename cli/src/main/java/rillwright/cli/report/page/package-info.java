/** A page as a value: what it says, in blocks, and nothing of how it is printed. */
package rillwright.cli.report.page;
