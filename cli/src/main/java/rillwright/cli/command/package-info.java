/**
 * The commands, one class each: what the user asked, handed to the part of the program that knows.
 */
package rillwright.cli.command;
