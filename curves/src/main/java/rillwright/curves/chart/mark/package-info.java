/** Colours, pens, marks and words that pictures are made of. Uses {@code layout}. */
package rillwright.curves.chart.mark;
