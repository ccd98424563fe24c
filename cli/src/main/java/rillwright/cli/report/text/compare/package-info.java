/** Two projects side by side, on a page. */
package rillwright.cli.report.text.compare;
