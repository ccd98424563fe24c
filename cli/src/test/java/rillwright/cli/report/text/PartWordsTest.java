package rillwright.cli.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.unit.Unit;
import rillwright.solver.law.curve.MonotoneCubic.Knot;
import rillwright.solver.law.filter.TwoTermLoss;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.minor.TabulatedLoss;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Part;

class PartWordsTest {
  private static final double NINE_M3_PER_HOUR = Unit.CUBIC_METRE_PER_HOUR.toSi(9);

  private static String metric(Part part) {
    return PartWords.of(part, ShownUnits.METRIC);
  }

  @Test
  void filterHasWhatItTakesWhenClean() {
    Filter clean =
        new Filter(new PowerLoss(0.9, NINE_M3_PER_HOUR, 1.8), 0, OptionalDouble.empty(), 0);

    assertEquals("filter (0.9 m at 9 m3/h)", metric(clean));
    assertEquals(
        "filter (0.9 m at 9 m3/h when clean), 30 % clogged", metric(clean.withClogged(0.3)));
  }

  @Test
  void filterOfTwoTermsHasWhatItTakesAtARoundFlow() {
    TwoTermLoss law = new TwoTermLoss(0.3 / Unit.CUBIC_METRE_PER_HOUR.toSi(10), 0);
    assertEquals(
        "filter (0.3 m at 10 m3/h)", metric(new Filter(law, 0, OptionalDouble.empty(), 0)));
  }

  @Test
  void lossHasItsLastPoint() {
    List<Knot> points =
        List.of(new Knot(NINE_M3_PER_HOUR / 2, 0.05), new Knot(NINE_M3_PER_HOUR, 0.15));
    assertEquals(
        "loss (150 mm at 9 m3/h)",
        metric(new Loss(TabulatedLoss.through(points), Optional.empty())));
  }
}
