/** A picture as SVG: alone in knowing Batik. */
package rillwright.curves.chart.svg;
