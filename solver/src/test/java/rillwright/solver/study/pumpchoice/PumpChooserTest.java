package rillwright.solver.study.pumpchoice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.trial.PlainNetworks;
import rillwright.solver.trial.PumpOffer;
import rillwright.solver.trial.RunningTerms;

/** Pumps of straight curves; the flows are those of the closed form in {@code PumpTrialsTest}. */
class PumpChooserTest {
  private static final RunningTerms TERMS = new RunningTerms(5000, OptionalDouble.of(0.2), 10);

  private static PumpChoice choose(int upTo, PumpOffer... offers) {
    return PumpChooser.choose(
        PlainNetworks.oneOutlet(), PlainNetworks.PLACE, List.of(offers), upTo, TERMS);
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
    PumpOffer thrifty = PlainNetworks.offer("thrifty", 4.0, 80);
    PumpOffer bought =
        new PumpOffer(
            "thrifty",
            thrifty.curve(),
            thrifty.speeds(),
            OptionalDouble.of(150),
            thrifty.minSubmergenceM());

    // 800 + 150 against 900
    assertEquals(
        List.of("plain", "thrifty"),
        models(choose(1, bought, PlainNetworks.offer("plain", 4, 90))));
  }

  @Test
  void upToThreeAreFiveWaysOfOnePump() {
    assertEquals(5, choose(3, PlainNetworks.offer("p", 3, 50)).ranked().size());
  }
}
