/** The command that writes the job sheet. */
package rillwright.cli.command.jobsheet;
