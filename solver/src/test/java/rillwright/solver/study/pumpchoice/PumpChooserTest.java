package rillwright.solver.study.pumpchoice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.progress.Progress;
import rillwright.solver.trial.ConditionTrial;
import rillwright.solver.trial.PlainNetworks;
import rillwright.solver.trial.PumpOffer;
import rillwright.solver.trial.RatedTrial;
import rillwright.solver.trial.RunningTerms;
import rillwright.solver.trial.SiteState;
import rillwright.solver.trial.SpeedBand;

/** Pumps of straight curves; the flows are those of the closed form in {@code PumpTrialsTest}. */
class PumpChooserTest {
  private static final RunningTerms TERMS = new RunningTerms(5000, OptionalDouble.of(0.2), 10);

  private static PumpChoice choose(int upTo, PumpOffer... offers) {
    return PumpChooser.choose(
        PlainNetworks.oneOutlet(),
        List.of(),
        PlainNetworks.PLACE,
        List.of(offers),
        upTo,
        TERMS,
        Progress.UNSEEN);
  }

  private static List<String> models(PumpChoice choice) {
    return choice.ranked().stream().map(r -> r.trial().setup().offer().model()).toList();
  }

  @Test
  void thoseThatDoItComeByCostAndTheOthersByNearness() {
    PumpChoice choice =
        choose(
            1,
            PlainNetworks.offer("dry", 1.5, 10),
            PlainNetworks.offer("weak", 2.6, 20), // 0.87 L/s
            PlainNetworks.offer("dear", 3.9, 150),
            PlainNetworks.offer("nearly", 3.4, 60), // 1.80 L/s
            PlainNetworks.offer("cheap", 4.0, 90));

    assertEquals(List.of("cheap", "dear", "nearly", "weak", "dry"), models(choice));
    // 90 W · 5000 h · 10 years · 0.2 a kWh
    assertEquals(900, choice.ranked().get(0).costOverYears().orElseThrow(), 1e-9);
  }

  @Test
  void priceOfThePumpCountsOnce() {
    PumpOffer thrifty = priced(PlainNetworks.offer("thrifty", 4.0, 80), 250);
    PumpOffer plain = priced(PlainNetworks.offer("plain", 4, 90), 100);

    // 800 + 250 against 900 + 100
    assertEquals(List.of("plain", "thrifty"), models(choose(1, thrifty, plain)));
  }

  private static PumpOffer priced(PumpOffer offer, double price) {
    return new PumpOffer(
        offer.model(),
        offer.curve(),
        offer.speeds(),
        OptionalDouble.of(price),
        offer.needs(),
        true);
  }

  @Test
  void pumpWithoutAPriceStandsBehindThoseWithOneThoughItCostsLessAsFarAsKnown() {
    PumpOffer unpriced = PlainNetworks.offer("unpriced", 4.0, 80);
    PumpOffer priced = priced(PlainNetworks.offer("priced", 4, 90), 100);

    assertEquals(List.of("priced", "unpriced"), models(choose(1, unpriced, priced)));
  }

  /**
   * The outlet half a metre higher takes half a metre off the pump: 4 m at no flow give there what
   * 3.5 m give as it stands, 1.899 L/s, and 4.1 m what 3.6 m give, 2 L/s: 600 · 0.002 + 0.4 + 2.
   */
  private static final List<SiteState> AS_IT_STANDS_AND_RAISED =
      List.of(
          new SiteState("as written", PlainNetworks.oneOutlet()),
          new SiteState("raised", PlainNetworks.oneOutlet(PlainNetworks.C, 2.5)));

  private static PumpChoice chooseInBoth(PumpOffer... offers) {
    return PumpChooser.choose(
        PlainNetworks.oneOutlet(),
        AS_IT_STANDS_AND_RAISED,
        PlainNetworks.PLACE,
        List.of(offers),
        1,
        TERMS,
        Progress.UNSEEN);
  }

  @Test
  void pumpThatACrestRaisedInOneConditionDefeatsNoLongerMeetsTheTargets() {
    PumpOffer cheap = PlainNetworks.offer("cheap", 4, 50);
    PumpOffer stout = PlainNetworks.offer("stout", 4.1, 90);
    assertEquals(List.of("cheap", "stout"), models(choose(1, cheap, stout)), "without conditions");

    PumpChoice choice = chooseInBoth(cheap, stout);

    assertEquals(List.of("stout", "cheap"), models(choice));
    RatedTrial first = choice.ranked().get(0);
    assertTrue(first.meetsTargets());
    assertEquals(1, first.worst().orElseThrow().leastFraction(), 1e-8);
    // 90 W · 5000 h · 10 years · 0.2 a kWh, as it stands
    assertEquals(900, first.costOverYears().orElseThrow(), 1e-9);
    RatedTrial second = choice.ranked().get(1);
    assertFalse(second.meetsTargets());
    assertTrue(second.trial().verdict().meetsTargets(), "as it stands it does");
    ConditionTrial worst = second.worst().orElseThrow();
    assertEquals("raised", worst.condition());
    assertEquals(PlainNetworks.flowOf(3.5, PlainNetworks.C) / 0.002, worst.leastFraction(), 1e-8);
    assertTrue(second.conditions().get(0).meetsTargets());
  }

  @Test
  void speedThatIsSetIsTheLeastThatMeetsTheTargetsInEveryCondition() {
    // n² 6 − n 600 · 0.002 = 2.4 as it stands: 0.7403, and 2.9 raised: n = (1.2 + √(1.44 +
    // 69.6))/12 = 0.8024, so 81 %. At 75 % raised it gives 3.375 − 450 Q = 2.5 + 1e5 Q²: 1.461 L/s.
    PumpOffer offer = PlainNetworks.offer("set", 6, 100, Optional.of(new SpeedBand(0.4, 1)));

    List<RatedTrial> ranked = chooseInBoth(offer).ranked();

    assertEquals(List.of(0.81, 1.0), ranked.stream().map(r -> r.trial().setup().speed()).toList());
    assertTrue(ranked.get(0).meetsTargets());
  }

  @Test
  void conditionWithoutABalanceIsTheWorst() {
    List<SiteState> states =
        List.of(
            new SiteState("low", PlainNetworks.oneOutlet(PlainNetworks.C, 2.5)),
            new SiteState("astray", PlainNetworks.withoutBalance()));

    RatedTrial rated =
        PumpChooser.choose(
                PlainNetworks.oneOutlet(),
                states,
                PlainNetworks.PLACE,
                List.of(PlainNetworks.offer("p", 4.1, 90)),
                1,
                TERMS,
                Progress.UNSEEN)
            .ranked()
            .get(0);

    assertFalse(rated.meetsTargets());
    assertEquals("astray", rated.worst().orElseThrow().condition());
    assertTrue(rated.worst().orElseThrow().trial().isEmpty());
  }

  @Test
  void upToThreeAreFiveWaysOfOnePump() {
    assertEquals(5, choose(3, PlainNetworks.offer("p", 3, 50)).ranked().size());
  }
}
