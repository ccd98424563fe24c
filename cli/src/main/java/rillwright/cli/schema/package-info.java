/**
 * The JSON Schemas of project files and of results, which are resources under {@code
 * rillwright/schema}. Uses nothing else of the project.
 */
package rillwright.cli.schema;
