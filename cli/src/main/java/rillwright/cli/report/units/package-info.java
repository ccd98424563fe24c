/**
 * Quantities as they are shown to people: units and no more figures than mean something. Uses the
 * units of {@code curves} and the solver's {@code finding}.
 */
package rillwright.cli.report.units;
