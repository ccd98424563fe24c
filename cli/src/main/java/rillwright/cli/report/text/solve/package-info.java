/**
 * A solved project as a crew lead reads it: falls first, then pumps, levels, lines, gauges,
 * findings and cost. Uses {@code report}, {@code report.text} and the solver.
 */
package rillwright.cli.report.text.solve;
