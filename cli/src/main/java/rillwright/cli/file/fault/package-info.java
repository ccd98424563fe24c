/**
 * What can be wrong with a user's file, where, and what would be right. Uses {@code cli.wording}
 * and nothing else of the project.
 */
package rillwright.cli.file.fault;
