package rillwright.solver.steady;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.network.ChangeOfBore;
import rillwright.solver.network.Line;

/**
 * What happens in a line.
 *
 * @param line which
 * @param flowM3PerS flow, m³/s, positive from its first point to its second
 * @param headLossM head at its first point less head at its second, m (of a starved chamber the
 *     level that it draws from); empty where nothing determines it
 * @param course how it runs over its high points
 * @param open false if it carries exactly nothing because something in it is closed or because it
 *     does not start
 * @param entranceLossM head taken at its first end, m
 * @param parts in order
 * @param exitLossM head taken at its second end, m
 */
public record LineState(
    Line line,
    double flowM3PerS,
    OptionalDouble headLossM,
    Course course,
    boolean open,
    double entranceLossM,
    List<PartState> parts,
    double exitLossM) {
  public LineState {
    parts = List.copyOf(parts);
  }

  /** Speed of the water in the line's main bore, m/s, never negative; empty without a bore. */
  public OptionalDouble velocityMPerS() {
    return line.mainBore()
        .map(bore -> OptionalDouble.of(Math.abs(bore.velocityAt(flowM3PerS))))
        .orElse(OptionalDouble.empty());
  }

  /**
   * Head taken where its bore changes, m, in the direction of the line; empty where no water runs
   * from one run to the other.
   */
  public OptionalDouble headLossM(ChangeOfBore change) {
    boolean inAir = course instanceof Course.Vented vent && change.spans(vent.highPoint());
    return inAir || parts.get(change.after().index()).headLossM().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(change.law().headLossAt(flowM3PerS));
  }
}
