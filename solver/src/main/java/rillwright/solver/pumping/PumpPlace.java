package rillwright.solver.pumping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.law.NoLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * Where a pump stands or will stand.
 *
 * @param line its line
 * @param partIndex its place among the line's parts, counted from 0
 */
public record PumpPlace(LineName line, int partIndex) {

  /** The places of pumps that are not chosen yet, in the order of the network. */
  public static List<PumpPlace> listPlanned(Network network) {
    return list(network, PlannedPump.class);
  }

  /** The places of pumps that are chosen, in the order of the network. */
  public static List<PumpPlace> listChosen(Network network) {
    return list(network, Pump.class);
  }

  /**
   * Refuses a network that has no balance whatever pump stands here.
   *
   * @throws rillwright.solver.steady.NoBalance naming draws that cannot be met
   */
  public void requireDrawsMet(Network network) {
    Loss anyPump = new Loss(NoLoss.forwardOnly(), Optional.empty());
    SteadyStateFinder.requireDrawsMet(network.withPart(line, partIndex, anyPump));
  }

  private static List<PumpPlace> list(Network network, Class<? extends Part> kind) {
    List<PumpPlace> places = new ArrayList<>();
    for (Line line : network.lines()) {
      for (int i = 0; i < line.parts().size(); i++) {
        if (kind.isInstance(line.parts().get(i))) {
          places.add(new PumpPlace(line.name(), i));
        }
      }
    }
    return places;
  }
}
