package rillwright.solver.network.topology;

import rillwright.solver.network.PointName;

/**
 * A draw that the lines cannot bring, or an inflow that they cannot take away.
 *
 * @param point where
 * @param drawM3PerS the fixed flow taken out, m³/s; negative puts in
 * @param metM3PerS the most of it that the allowed directions carry, m³/s, with the sign of the
 *     draw
 */
public record UnmetDraw(PointName point, double drawM3PerS, double metM3PerS) {}
