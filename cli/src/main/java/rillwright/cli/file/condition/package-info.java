/**
 * Conditions in which a project is looked at: autumn, cold water, a low pond. A condition is
 * changes to the file; a project in a condition is a project like any other. Uses {@code change}
 * and the mapping of {@code file}.
 */
package rillwright.cli.file.condition;
