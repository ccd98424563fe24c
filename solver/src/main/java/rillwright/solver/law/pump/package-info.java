/**
 * What a pump gives: its published curve, other speeds, several together, water running back
 * through it.
 */
package rillwright.solver.law.pump;
