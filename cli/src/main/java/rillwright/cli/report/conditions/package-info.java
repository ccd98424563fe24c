/**
 * What is found in several conditions, said once. Uses the answers of {@code study} and the
 * solver's findings.
 */
package rillwright.cli.report.conditions;
