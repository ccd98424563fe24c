package rillwright.cli.study;

import java.util.List;
import rillwright.solver.network.Network;
import rillwright.solver.pumping.PumpPlace;

/** Refuses networks in which a pump is still to be chosen: nothing would drive their water. */
public final class PumpsChosen {
  private PumpsChosen() {}

  /** Refuses a network in which any pump is to be chosen. */
  public static void require(Network network) {
    require(network, List.of());
  }

  /**
   * Refuses a network in which another pump is to be chosen than the one that a request asks for.
   *
   * @throws IllegalArgumentException naming its line
   */
  public static void require(Network network, PumpPlace asked) {
    require(network, List.of(asked));
  }

  private static void require(Network network, List<PumpPlace> asked) {
    for (PumpPlace place : PumpPlace.listPlanned(network)) {
      if (!asked.contains(place)) {
        throw new IllegalArgumentException(
            "the pump in line \"" + place.line().value() + "\" is still to be chosen");
      }
    }
  }
}
