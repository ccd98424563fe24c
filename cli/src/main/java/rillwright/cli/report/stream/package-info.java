/** Where the water of a project's streams is, for the reports. Uses the solver. */
package rillwright.cli.report.stream;
