package rillwright.cli.study.sheet;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.curves.sheet.fact.Nameplate;

/**
 * The current that a clamp meter should read on one conductor: I = P / (V · PF), with three phases
 * P / (√3 · V · PF), V between two lines. It is the definition of the power factor.
 *
 * @param leastA A, at the greatest power factor
 * @param greatestA A, at the least
 */
public record MeterCurrent(double leastA, double greatestA) {
  /** Least power factor of small motors under load; common practice, no source. */
  public static final double USUAL_LEAST_POWER_FACTOR = 0.6;

  /**
   * The current at a power.
   *
   * @param powerW electrical input, W
   * @param plate voltage, phases and power factor; without the last from the usual least up to 1
   * @return empty without a voltage
   */
  public static Optional<MeterCurrent> at(double powerW, Nameplate plate) {
    if (plate.voltageV().isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble known = plate.powerFactor();
    double apparent = powerW / (plate.voltageV().getAsDouble() * Math.sqrt(plate.phases()));
    return Optional.of(
        new MeterCurrent(
            apparent / known.orElse(1), apparent / known.orElse(USUAL_LEAST_POWER_FACTOR)));
  }
}
