/** The duty of a pump as text. */
package rillwright.cli.report.text.duty;
