/**
 * Where people answer questions: a terminal with a line to edit (alone in knowing JLine), or plain
 * lines.
 */
package rillwright.cli.command.talk;
