/**
 * A project solved in several conditions and judged by the worst of them. Uses {@code report} and
 * the solver's steady state.
 */
package rillwright.cli.report.conditions;
