package rillwright.curves.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.pump.PumpSet.Arrangement;

class PumpTraceTest {
  private static PumpSet set(OptionalDouble powerW) {
    PumpCurve curve =
        new PumpCurve(
            List.of(
                new PumpPoint(0, 9, powerW),
                new PumpPoint(0.002, 7.5, powerW),
                new PumpPoint(0.004, 3, powerW)));
    return new PumpSet(curve, 0.8, 2, Arrangement.PARALLEL, Optional.empty());
  }

  @Test
  void thePublishedPartRunsFromNoFlowToTheEndOfTheSheetAtTheSpeedAndCount() {
    PumpSet set = set(OptionalDouble.empty());
    var points = PumpTrace.published(set);
    assertEquals(0, points.get(0).flowM3PerS());
    assertEquals(0.64 * 9, points.get(0).headM(), 1e-12);
    var last = points.get(points.size() - 1);
    assertEquals(2 * 0.8 * 0.004, last.flowM3PerS(), 1e-15);
    assertEquals(0.64 * 3, last.headM(), 1e-12);
    points.forEach(point -> assertEquals(set.headAt(point.flowM3PerS()), point.headM(), 1e-12));
  }

  @Test
  void whatLiesBeyondBeginsWhereTheSheetEnds() {
    PumpSet set = set(OptionalDouble.empty());
    var beyond = PumpTrace.beyond(set, 0.008);
    assertEquals(set.publishedRangeM3PerS(), beyond.get(0).flowM3PerS(), 1e-15);
    assertEquals(0.008, beyond.get(beyond.size() - 1).flowM3PerS(), 1e-15);
    assertTrue(PumpTrace.beyond(set, 0.005).isEmpty());
  }

  @Test
  void powerIsTracedOnlyWhereTheSheetGivesIt() {
    assertTrue(PumpTrace.power(set(OptionalDouble.empty())).isEmpty());
    assertTrue(PumpTrace.power(set(OptionalDouble.of(300))).size() > 50);
  }
}
