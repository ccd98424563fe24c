/**
 * The duty: flow and head that a pump must make so that every fall gets its target. Uses {@code
 * pumping}.
 */
package rillwright.solver.study.duty;
