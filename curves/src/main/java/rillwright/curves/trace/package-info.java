/**
 * Curves of head against flow: what a network needs and what a pump gives, as points to draw. Uses
 * the solver and {@code chart.content}.
 */
package rillwright.curves.trace;
