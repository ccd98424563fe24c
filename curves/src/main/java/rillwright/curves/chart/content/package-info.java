/**
 * What a chart of pump and system curves shows: plain values in SI, independent of how they were
 * found. Uses only the units.
 */
package rillwright.curves.chart.content;
