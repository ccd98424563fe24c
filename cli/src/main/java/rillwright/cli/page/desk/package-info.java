/** The job that lies open: its text, what was changed, what is computed of it. Knows no HTML. */
package rillwright.cli.page.desk;
