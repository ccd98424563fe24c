/**
 * What a project file says, and what was taken where it says nothing. Uses {@code cli.file}, {@code
 * report.units} and the solver.
 */
package rillwright.cli.report.check;
