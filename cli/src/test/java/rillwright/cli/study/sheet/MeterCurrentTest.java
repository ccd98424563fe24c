package rillwright.cli.study.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.curves.sheet.fact.Nameplate;

/** The definition of the power factor, put back: P = V · I · PF, P = √3 · V · I · PF. */
class MeterCurrentTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static Nameplate plate(double volts, OptionalDouble powerFactor, int phases) {
    return new Nameplate(NONE, OptionalDouble.of(volts), powerFactor, phases);
  }

  @Test
  void takesThePowerFactorOfTheSheet() {
    MeterCurrent current =
        MeterCurrent.at(1840, plate(230, OptionalDouble.of(0.8), 1)).orElseThrow();
    assertEquals(230 * 0.8 * current.leastA(), 1840, 1e-9);
    assertEquals(10, current.greatestA(), 1e-12);
  }

  @Test
  void withoutOneItIsABand() {
    MeterCurrent current = MeterCurrent.at(690, plate(115, NONE, 1)).orElseThrow();
    assertEquals(6, current.leastA(), 1e-12);
    assertEquals(10, current.greatestA(), 1e-12);
  }

  @Test
  void threePhasesShareIt() {
    MeterCurrent current =
        MeterCurrent.at(3000, plate(400, OptionalDouble.of(0.75), 3)).orElseThrow();
    assertEquals(3000, Math.sqrt(3) * 400 * 0.75 * current.leastA(), 1e-9);
    assertEquals(5.7735, current.leastA(), 1e-4);
  }

  @Test
  void withoutAVoltageThereIsNone() {
    assertEquals(Optional.empty(), MeterCurrent.at(400, Nameplate.NONE));
  }
}
