/** The command that serves the live page. */
package rillwright.cli.command.page;
