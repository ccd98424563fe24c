/** How far long work has come, and whether it goes on. Uses nothing. */
package rillwright.solver.progress;
