/**
 * What a report is about: a solved project. The packages below print it. Uses {@code json}, {@code
 * report.units}, the running section of {@code file} and the solver.
 */
package rillwright.cli.report;
