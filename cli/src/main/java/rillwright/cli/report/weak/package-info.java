/**
 * What is said about a weak fall, whatever it is written in: words for causes and readings. Uses
 * {@code report.units} and the solver's diagnosis.
 */
package rillwright.cli.report.weak;
