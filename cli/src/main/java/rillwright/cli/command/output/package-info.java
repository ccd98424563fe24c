/** Where answers and pictures are written: whole or not at all, and never over an input. */
package rillwright.cli.command.output;
