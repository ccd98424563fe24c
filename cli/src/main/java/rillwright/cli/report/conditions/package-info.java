/**
 * What is found in several conditions, told once. Uses the answers of {@code study} and the
 * solver's findings.
 */
package rillwright.cli.report.conditions;
