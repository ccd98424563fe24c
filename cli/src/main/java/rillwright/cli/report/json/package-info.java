/**
 * Results for programs: JSON in SI, full precision, one stable structure, the same bytes for the
 * same input. Uses {@code report}, the solver and Jackson's generator.
 */
package rillwright.cli.report.json;
