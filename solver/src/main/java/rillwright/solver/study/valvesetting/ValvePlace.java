package rillwright.solver.study.valvesetting;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Valve;

/**
 * Where a valve stands.
 *
 * @param line its line
 * @param partIndex its place among the line's parts, counted from 0
 */
public record ValvePlace(LineName line, int partIndex) {

  /** The places of all valves that are marked adjustable, in the order of the network. */
  public static List<ValvePlace> listAdjustable(Network network) {
    return network.placed(Valve.class).stream()
        .filter(valve -> valve.part().adjustable())
        .map(ValvePlace::of)
        .toList();
  }

  /** The last adjustable valve of a line, else its last valve; empty if it has none. */
  public static Optional<ValvePlace> findIn(Line line) {
    return line.placed(Valve.class).stream()
        .max(
            Comparator.comparing((Placed<Valve> valve) -> valve.part().adjustable())
                .thenComparing(Placed::index))
        .map(ValvePlace::of);
  }

  private static ValvePlace of(Placed<Valve> valve) {
    return new ValvePlace(valve.line().name(), valve.index());
  }

  /** The valve there. */
  public Valve in(Network network) {
    return (Valve) network.line(line).parts().get(partIndex);
  }

  /** A network with some valves set otherwise, all at once. */
  static Network withLosses(Network network, Map<ValvePlace, Valve.Setpoint> losses) {
    Map<LineName, Line> changed = new LinkedHashMap<>();
    losses.forEach(
        (place, loss) -> {
          Line line = changed.getOrDefault(place.line(), network.line(place.line()));
          Valve set = place.in(network).withSetpoint(loss);
          changed.put(place.line(), line.withPart(place.partIndex(), set));
        });
    return network.withLines(changed.values());
  }

  /** A network with the valve there set otherwise. */
  Network withLoss(Network network, Valve.Setpoint loss) {
    return network.withPart(line, partIndex, in(network).withSetpoint(loss));
  }
}
