/** How a command ends and where pictures are written: whole or not at all, never over an input. */
package rillwright.cli.command.output;
