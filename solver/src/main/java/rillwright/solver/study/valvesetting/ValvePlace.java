package rillwright.solver.study.valvesetting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
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
    List<ValvePlace> places = new ArrayList<>();
    for (Line line : network.lines()) {
      for (int i = 0; i < line.parts().size(); i++) {
        if (line.parts().get(i) instanceof Valve valve && valve.adjustable()) {
          places.add(new ValvePlace(line.name(), i));
        }
      }
    }
    return places;
  }

  /** The last adjustable valve of a line, else its last valve; empty if it has none. */
  public static Optional<ValvePlace> findIn(Line line) {
    Optional<ValvePlace> last = Optional.empty();
    boolean adjustable = false;
    for (int i = 0; i < line.parts().size(); i++) {
      if (line.parts().get(i) instanceof Valve valve && (valve.adjustable() || !adjustable)) {
        last = Optional.of(new ValvePlace(line.name(), i));
        adjustable |= valve.adjustable();
      }
    }
    return last;
  }

  /** The valve there. */
  public Valve in(Network network) {
    return (Valve) network.line(line).parts().get(partIndex);
  }

  /** A network with the valve there set otherwise. */
  Network withLoss(Network network, Valve.Setpoint loss) {
    return network.withPart(line, partIndex, in(network).withSetpoint(loss));
  }
}
