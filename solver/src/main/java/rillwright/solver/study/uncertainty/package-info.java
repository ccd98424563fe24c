/**
 * The odds: what comes out of a network when some of its quantities are not known exactly.
 * Quantities are distributions, a network is a function of their values; where both come from is
 * not known here. Uses {@code steady} and, in {@code CutNormal} alone, Commons Statistics.
 */
package rillwright.solver.study.uncertainty;
