/** Valve settings as text. */
package rillwright.cli.report.text.balance;
