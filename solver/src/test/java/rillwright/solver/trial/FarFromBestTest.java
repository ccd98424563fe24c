package rillwright.solver.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.finding.Finding;
import rillwright.solver.law.pump.BestEfficiency;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.pump.PumpSet.Arrangement;

/** A straight curve with the same watts at every flow is best in the middle of its range. */
class FarFromBestTest {
  private static PumpSet set(int count, double speed, OptionalDouble watts) {
    PumpCurve curve =
        new PumpCurve(List.of(new PumpPoint(0, 6, watts), new PumpPoint(0.01, 0, watts)));
    return new PumpSet(curve, speed, count, Arrangement.PARALLEL, Optional.empty());
  }

  @ParameterizedTest(name = "{0} m3/s of a best flow of 0.005 m3/s: {1}")
  @CsvSource({
    "0.0012, nothing", // below the least flow: that is reported instead
    "0.0013, far-from-best-efficiency",
    "0.0034, far-from-best-efficiency",
    "0.0035, nothing",
    "0.005, nothing",
    "0.00602, nothing", // 120.4 %, reported as 120 %
    "0.0061, far-from-best-efficiency",
    "0, nothing"
  })
  void bandIsSeventyToAHundredAndTwentyPercent(double flowM3PerS, String code) {
    assertEquals(
        code,
        FarFromBest.find("supply", set(1, 1, OptionalDouble.of(100)), flowM3PerS)
            .map(Finding::code)
            .orElse("nothing"));
  }

  @Test
  void bestFlowGoesWithSpeedAndCount() {
    // two at half speed: best at 2 · 0.5 · 0.005
    PumpSet two = set(2, 0.5, OptionalDouble.of(100));
    assertEquals(Optional.empty(), FarFromBest.find("supply", two, 0.005));
    assertEquals(0.5, BestEfficiency.shareOf(0.0025, two).orElseThrow(), 1e-6);
  }

  @Test
  void withoutPowerNothingIsKnown() {
    assertEquals(
        Optional.empty(), FarFromBest.find("supply", set(1, 1, OptionalDouble.empty()), 0.009));
  }
}
