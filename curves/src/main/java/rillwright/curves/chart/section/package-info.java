/** Long sections: columns of what the water meets, their ground, pipes, water and head lines. */
package rillwright.curves.chart.section;
