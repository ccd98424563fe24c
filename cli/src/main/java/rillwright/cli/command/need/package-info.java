/** What a command needs of a project before it asks a study, and says where it is missing. */
package rillwright.cli.command.need;
