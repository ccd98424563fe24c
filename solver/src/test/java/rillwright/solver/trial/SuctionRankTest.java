package rillwright.solver.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.pump.PumpSet.Arrangement;
import rillwright.solver.law.pump.SuctionNeeds;
import rillwright.solver.network.Network;

/** Pumps that lack at their inlet what they ask for, among those that meet the targets. */
class SuctionRankTest {
  /** The one that draws air is cheaper and comes after. */
  @Test
  void aPumpThatAsksForMoreWaterThanTheChamberHasIsNotFirst() {
    PumpOffer plain = PlainNetworks.offer("deep", 3.65, 50);
    PumpOffer deep =
        new PumpOffer(
            "deep",
            plain.curve(),
            Optional.empty(),
            OptionalDouble.empty(),
            new SuctionNeeds(
                OptionalDouble.of(0.5), OptionalDouble.empty(), OptionalDouble.empty()),
            true);
    RunningTerms terms = new RunningTerms(5000, OptionalDouble.of(0.2), 10);
    List<RatedTrial> rated = new ArrayList<>();
    for (PumpOffer offer : List.of(deep, PlainNetworks.offer("dear", 3.65, 100))) {
      rated.add(RatedTrial.of(trial(PlainNetworks.withChamber(), offer), List.of(), terms));
    }
    rated.sort(RatedTrial.BEST_FIRST);
    assertEquals(
        List.of("dear", "deep"),
        rated.stream().map(it -> it.trial().setup().offer().model()).toList());
    assertTrue(rated.stream().allMatch(RatedTrial::meetsTargets));
    assertTrue(rated.get(1).lacksSuction());
  }

  private static PumpTrial trial(Network network, PumpOffer offer) {
    return new PumpTrials(network, PlainNetworks.PLACE)
        .run(new PumpSetup(offer, 1, Arrangement.PARALLEL, 1));
  }
}
