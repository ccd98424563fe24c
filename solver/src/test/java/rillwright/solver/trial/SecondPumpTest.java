package rillwright.solver.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.pump.PumpSet.Arrangement;
import rillwright.solver.network.Network;
import rillwright.solver.network.Pump;
import rillwright.solver.trial.Verdict.Kind;

/**
 * A second pump beside one that is there. Throttled, both outlets together take 2 L/s, and 3.1 m at
 * the tee for the high one; the pump that is there gives H₀ − 600 · 0.002 − 0.4 there.
 */
class SecondPumpTest {
  private static Pump pump(double shutOffM) {
    PumpCurve curve = PlainNetworks.offer("there", shutOffM, 100).curve();
    return new Pump("there", new PumpSet(curve, 1, 1, Arrangement.PARALLEL, Optional.empty()));
  }

  private static Network beside(double shutOffM) {
    return PlainNetworks.beside(PlainNetworks.twoOutlets(), "split", pump(shutOffM));
  }

  private static List<RatedTrial> tried(Network network, PumpOffer offer) {
    return new TrialSites(network, List.of(), PlainNetworks.PLACE)
        .runAtUsefulSpeeds(
            new PumpSetup(offer, 1, Arrangement.PARALLEL, 1),
            new RunningTerms(8760, OptionalDouble.of(0.2), 10));
  }

  @Test
  void isNotNeededWhereTheOtherMeetsTheTargetsThrottled() {
    // 14 − 1.2 − 0.4 = 12.4 m
    Demand demand = Demand.at(beside(14), PlainNetworks.PLACE);
    List<RatedTrial> tried =
        tried(beside(14), PlainNetworks.offer("vario", 9, 100, Optional.of(new SpeedBand(0.4, 1))));

    assertTrue(demand.asksNothingThrottled());
    assertEquals(1, tried.size(), "no speed is right for no flow");
    Verdict verdict = tried.get(0).trial().verdict();
    assertEquals(Kind.NOT_NEEDED, verdict.kind());
    assertTrue(verdict.throttled().isEmpty());
    assertFalse(tried.get(0).meetsTargets());
  }

  @Test
  void standingDeadItIsNotNeededThoughTheFallsGetTheirTargets() {
    // the other gives 2.385 L/s, 119 % of the target
    Network network = PlainNetworks.beside(PlainNetworks.oneOutlet(), "top", pump(4));
    List<RatedTrial> tried = tried(network, PlainNetworks.offer("weak", 1, 100));

    assertEquals(0, tried.get(0).trial().operating().flowM3PerS(), 1e-12);
    assertEquals(Kind.NOT_NEEDED, tried.get(0).trial().verdict().kind());
  }

  @Test
  void isNeededWhereTheOtherFallsShort() {
    // 4 − 1.2 − 0.4 = 2.4 m
    Demand demand = Demand.at(beside(4), PlainNetworks.PLACE);

    assertFalse(demand.asksNothingThrottled());
    assertEquals(
        Kind.THROTTLED,
        tried(beside(4), PlainNetworks.offer("strong", 9, 100)).get(0).trial().verdict().kind());
  }

  @Test
  void inConditionsItMeetsTheTargetsWhereItIsNeededInOne() {
    List<SiteState> states =
        List.of(new SiteState("as written", beside(8)), new SiteState("worn", beside(4)));
    TrialSites sites = new TrialSites(beside(8), states, PlainNetworks.PLACE);

    RatedTrial rated =
        sites
            .runAtUsefulSpeeds(
                new PumpSetup(PlainNetworks.offer("strong", 9, 100), 1, Arrangement.PARALLEL, 1),
                new RunningTerms(8760, OptionalDouble.of(0.2), 10))
            .get(0);
    assertTrue(rated.meetsTargets());
    assertEquals("worn", rated.worst().orElseThrow().condition());
  }
}
