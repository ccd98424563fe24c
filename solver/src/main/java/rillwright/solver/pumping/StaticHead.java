package rillwright.solver.pumping;

import java.util.Optional;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;

/**
 * The head that a pump must give before any water runs, in its two parts.
 *
 * @param headM difference in level between the water and the first fall that runs, m
 * @param openingM what check valves on the way take besides to open, m, 0 or more
 */
public record StaticHead(double headM, double openingM) {

  /** That of a pump's place; empty if no flow can be drawn there. */
  public static Optional<StaticHead> of(Network network, PumpPlace place) {
    Optional<HeadNeeded> whole = HeadNeeded.at(network, place, 0);
    Optional<HeadNeeded> open = HeadNeeded.at(withoutFlappers(network), place, 0);
    return whole.isEmpty() || open.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new StaticHead(
                open.get().headM(), Math.max(0, whole.get().headM() - open.get().headM())));
  }

  private static Network withoutFlappers(Network network) {
    Network open = network;
    for (Line line : network.lines()) {
      if (line.parts().stream().anyMatch(StaticHead::opensAtAHead)) {
        open = open.withLine(line.withEach(CheckValve.class, StaticHead::opened));
      }
    }
    return open;
  }

  private static boolean opensAtAHead(Part part) {
    return part instanceof CheckValve valve && valve.crackingHeadM() > 0;
  }

  private static CheckValve opened(CheckValve valve) {
    return new CheckValve(
        valve.label(), 0, valve.lossCoefficient(), valve.inside(), valve.swings());
  }
}
