/**
 * What a study tells of a project in each of several conditions, as cases; solved ones are judged
 * by the worst of them. Uses {@code report} and the solver's steady state.
 */
package rillwright.cli.report.conditions;
