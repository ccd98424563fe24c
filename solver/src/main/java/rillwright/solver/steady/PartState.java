package rillwright.solver.steady;

import java.util.OptionalDouble;
import rillwright.solver.network.Part;

/**
 * What happens at a part of a line.
 *
 * @param part which
 * @param flowM3PerS flow through it, m³/s, with the sign of its line's
 * @param headLossM head upstream of it less head downstream of it, m; empty in a line that is shut
 *     and where water falls beside air
 * @param headBeforeM total head on its side towards the line's first point, m; empty where nothing
 *     determines it
 */
public record PartState(
    Part part, double flowM3PerS, OptionalDouble headLossM, OptionalDouble headBeforeM) {}
