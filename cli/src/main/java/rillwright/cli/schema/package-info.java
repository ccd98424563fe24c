/**
 * The JSON Schemas of project files and of results, which are resources under {@code
 * rillwright/schema}, and the fields of a project in words. Uses the trees of files.
 */
package rillwright.cli.schema;
