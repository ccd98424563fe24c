/**
 * The odds of a project with the names by which its file knows what is uncertain. Uses {@code
 * report.units} and the solver's uncertainty study.
 */
package rillwright.cli.report.odds;
