/**
 * What a crew should read on the day, before it reads it, with the bands of its instruments. Uses
 * {@code report}, {@code report.text}, {@code report.units} and the solver's readings.
 */
package rillwright.cli.report.text.visit;
