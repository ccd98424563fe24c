/** The choice of a pump or pipe as text: tables that settle it, and the reasons. */
package rillwright.cli.report.text.choice;
