/** Losses of filters: two-term laws through points, and what clogging does to any of them. */
package rillwright.solver.law.filter;
