/**
 * Starting and stopping: the water of a plan as stores and the flows between them, integrated in
 * time with error control. The only package that knows the integrator's library. Uses {@code
 * stream}.
 */
package rillwright.solver.stream.time;
