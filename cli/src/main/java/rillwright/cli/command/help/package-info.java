/**
 * Help pages: texts from resources with the fields of the project's schema in them. Uses {@code
 * schema}, pages and what all commands take.
 */
package rillwright.cli.command.help;
