/** Sketches of networks: where their points stand on the paper. */
package rillwright.curves.chart.sketch;
