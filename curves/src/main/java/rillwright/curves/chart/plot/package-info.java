/** A plot's ground, grid and axes: alone in knowing XChart. */
package rillwright.curves.chart.plot;
