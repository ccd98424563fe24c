/**
 * Head laws: the head that something takes at a flow, and nothing about what that something is.
 *
 * <p>Everything here is SI: heads in metres of the water that flows, flows in m³/s, slopes in s/m².
 * The packages below hold one kind of law each. This package and those below it use {@code water}
 * and nothing else of the project.
 */
package rillwright.solver.law;
