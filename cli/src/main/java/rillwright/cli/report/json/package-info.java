/**
 * Results for programs: JSON in SI, full precision, one stable structure, the same bytes for the
 * same input. Each answer is a {@link rillwright.cli.json.Shape}: what is written and what the
 * published schema says are one. Uses {@code report} and the solver.
 */
package rillwright.cli.report.json;
