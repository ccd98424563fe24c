/**
 * The slope of the content along a step, and where along it the slope vanishes. Uses nothing of the
 * project.
 */
package rillwright.solver.balance.content;
