/** Options that several commands take, and what they ask a study with. Uses {@code output}. */
package rillwright.cli.command.argument;
