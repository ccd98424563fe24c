/**
 * Valve settings of a project and what there is to say about them, for the reports. Uses {@code
 * report.units} and the solver.
 */
package rillwright.cli.report.balance;
