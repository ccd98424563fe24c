package rillwright.solver.study.pipechoice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Gravity;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet.Arrangement;
import rillwright.solver.law.pump.SuctionNeeds;
import rillwright.solver.network.Friction;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Run;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.pipechoice.Payback.Kind;
import rillwright.solver.study.pipechoice.PipeOption.Size;
import rillwright.solver.trial.PlainNetworks;
import rillwright.solver.trial.PumpOffer;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.RunningTerms;

/**
 * A thin pipe loses 3e5 Q², a thick one 1e5 Q²: at the target of 2 L/s the pump must give 3.2 m or
 * 2.4 m. The weak pump (4 − 600 Q, 100 W) gives 2.8 m there, the strong one (4.6 − 600 Q, 200 W)
 * 3.4 m.
 */
class PipeChooserTest {
  private static final LineName SUPPLY = PlainNetworks.PLACE.line();
  private static final RunningTerms TERMS = new RunningTerms(5000, OptionalDouble.of(0.2), 10);
  private static final PumpOffer WEAK = PlainNetworks.offer("weak", 4, 100);
  private static final PumpOffer STRONG = PlainNetworks.offer("strong", 4.6, 200);
  private static final PipeOption THIN = option("thin", 0.04, 3e5, 100);
  private static final PipeOption THICK = option("thick", 0.05, 1e5, 400);

  private static PipeOption option(String size, double boreM, double c, double materialCost) {
    return new PipeOption(
        Map.of(SUPPLY, new Size(size, boreM)),
        PlainNetworks.oneOutlet(c),
        List.of(),
        OptionalDouble.of(materialCost));
  }

  private static PumpSetup alone(PumpOffer offer) {
    return new PumpSetup(offer, 1, Arrangement.PARALLEL, 1);
  }

  private static PipeChoice choose(List<PipeOption> options, PumpOffer... offers) {
    List<PumpSetup> setups = List.of(offers).stream().map(PipeChooserTest::alone).toList();
    return PipeChooser.choose(options, PlainNetworks.PLACE, setups, TERMS, Progress.UNSEEN);
  }

  private static String size(RatedPipe rated) {
    return rated.option().sizes().get(SUPPLY).name();
  }

  @Test
  void eachSizeHasItsOwnCheapestPumpAndTheDearerPipePaysForItself() {
    PipeChoice choice = choose(List.of(THIN, THICK), WEAK, STRONG);

    RatedPipe least = choice.leastCost().orElseThrow();
    RatedPipe second = choice.runnerUp().orElseThrow();
    assertEquals("thick", size(least));
    assertEquals("weak", least.pump().trial().setup().offer().model());
    assertEquals("strong", second.pump().trial().setup().offer().model());
    // 400 + 10 · 500 kWh · 0.2 and 100 + 10 · 1000 kWh · 0.2
    assertEquals(1400, least.costOverYears().orElseThrow(), 1e-9);
    assertEquals(2100, second.costOverYears().orElseThrow(), 1e-9);
    // 300 more to begin with, 100 less a year
    Payback payback = Payback.of(second, least, TERMS);
    assertEquals(Kind.PAID_BACK, payback.kind());
    assertEquals(3, payback.years().orElseThrow(), 1e-9);
    assertEquals("thin", size(choice.cheapestPipe().orElseThrow()));
    assertEquals(
        PlainNetworks.flowOf(4.6, 3e5), second.pump().trial().operating().flowM3PerS(), 1e-12);
  }

  @Test
  void withOneAndTheSamePumpLargerPipeAddsFlowAndSavesNothing() {
    PipeChoice choice = choose(List.of(THICK, THIN), STRONG);

    RatedPipe thin = choice.leastCost().orElseThrow();
    assertEquals("thin", size(thin));
    RatedPipe thick = choice.nextSizesUp(thin).get(0);
    assertEquals(Kind.SAME_PUMP, Payback.of(thin, thick, TERMS).kind());
    assertTrue(
        thick.pump().trial().operating().flowM3PerS()
            > thin.pump().trial().operating().flowM3PerS());
  }

  @Test
  void withOneAndTheSamePumpTheCheapestPipeIsFirstThoughADearerOneIsThrottledToLessPower() {
    PumpPoint shutOff = new PumpPoint(0, 4.6, OptionalDouble.of(100));
    PumpPoint last = new PumpPoint(4.6 / 600, 0, OptionalDouble.of(400));
    PumpCurve rising = new PumpCurve(List.of(shutOff, last));
    PumpOffer pump =
        new PumpOffer(
            "rising", rising, Optional.empty(), OptionalDouble.empty(), SuctionNeeds.NONE, true);
    // the thin pipe gives 2.1 L/s, the wide one 4.1 L/s: that is throttled to 2 L/s
    PipeChoice choice = choose(List.of(option("wide", 0.06, 1e4, 101), THIN), pump);

    RatedPipe first = choice.ranked().get(0);
    RatedPipe second = choice.ranked().get(1);
    assertTrue(choice.isOfOnePump());
    assertTrue(second.isThrottled() && !first.isThrottled());
    assertTrue(
        second.costOverYears().orElseThrow() < first.costOverYears().orElseThrow(),
        "its 10-year cost is the lower one");
    assertEquals("thin", size(first));
  }

  @Test
  void nothingIsPaidBackAgainstASizeThatFailsTheTarget() {
    PipeChoice choice = choose(List.of(THIN, THICK), WEAK);

    assertEquals("thick", size(choice.ranked().get(0)));
    assertEquals(
        Kind.UNKNOWN, Payback.of(choice.ranked().get(1), choice.ranked().get(0), TERMS).kind());
    assertTrue(choice.runnerUp().isEmpty());
  }

  @Test
  void dearerPipeThatSavesNothingNeverPaysForItself() {
    PipeChoice choice = choose(List.of(THIN, THICK), WEAK, STRONG);
    RatedPipe cheaper = choice.ranked().get(0);
    RatedPipe dearer = choice.ranked().get(1);

    assertEquals(Kind.NEVER, Payback.of(cheaper, dearer, TERMS).kind());
  }

  @Test
  void nextSizesUpAreOneForEachFreeLine() {
    List<PipeOption> options = new ArrayList<>();
    for (double first : new double[] {0.04, 0.05, 0.08}) {
      for (double second : new double[] {0.04, 0.05, 0.08}) {
        Map<LineName, Size> sizes = new LinkedHashMap<>();
        sizes.put(SUPPLY, new Size(first + "", first));
        sizes.put(new LineName("other"), new Size(second + "", second));
        options.add(
            new PipeOption(
                sizes,
                PlainNetworks.oneOutlet(),
                List.of(),
                OptionalDouble.of(1000 * (first + second))));
      }
    }

    PipeChoice choice = choose(options, WEAK);

    RatedPipe least = choice.leastCost().orElseThrow();
    assertEquals("0.04, 0.04", names(least));
    assertEquals(
        List.of("0.04, 0.05", "0.05, 0.04"),
        choice.nextSizesUp(least).stream().map(PipeChooserTest::names).sorted().toList());
  }

  private static String names(RatedPipe rated) {
    return String.join(", ", rated.option().sizes().values().stream().map(Size::name).toList());
  }

  @Test
  void figuresOfALineAreThoseOfDarcysFormula() {
    // h/L = f V²/(2 g D) with f = 0.02; the water in 30 m of 50 mm is 30 π/4 0.05² m³.
    Run run = new Run(30, new Bore(0.05), new Friction.DarcyFactor(0.02), "pipe");
    Network network =
        PlainNetworks.oneOutlet()
            .withLine(
                PlainNetworks.oneOutlet()
                    .line(SUPPLY)
                    .withParts(
                        List.of(PlainNetworks.oneOutlet().line(SUPPLY).parts().get(0), run)));
    PipeOption option =
        new PipeOption(
            Map.of(SUPPLY, new Size("50", 0.05)), network, List.of(), OptionalDouble.empty());

    RatedPipe rated = choose(List.of(option), WEAK).ranked().get(0);

    double area = Math.PI / 4 * 0.05 * 0.05;
    double c = 0.02 * 30 / 0.05 / (2 * Gravity.STANDARD_M_PER_S2 * area * area);
    double flow = PlainNetworks.flowOf(4, c);
    LineFigures figures = rated.figures(SUPPLY);
    assertEquals(flow, rated.pump().trial().operating().flowM3PerS(), 1e-12);
    assertEquals(c * flow * flow / 30, figures.frictionMPerM().orElseThrow(), 1e-10);
    assertEquals(30 * area, rated.holdUpM3(), 1e-15);
    assertEquals(
        1000, rated.costOverYears().orElseThrow(), 1e-9, "no price of pipe: pump and electricity");
  }
}
