/** Data sheets for people. Uses {@code page}, {@code units} and what is said of curves. */
package rillwright.cli.report.text.sheet;
