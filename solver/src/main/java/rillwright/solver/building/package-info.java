/**
 * Networks made by hand, in a program: points and lines with few words. Uses {@code network},
 * {@code law} and {@code water}; nothing of the solver needs it.
 */
package rillwright.solver.building;
