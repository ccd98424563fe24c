/**
 * Where things go on a chart: round axes, text cut to fit, labels that keep clear of curves. Knows
 * shapes and fonts of java.awt, nothing of what the chart shows.
 */
package rillwright.curves.chart.layout;
