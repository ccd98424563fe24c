package rillwright.curves.sheet.fact;

import java.util.OptionalDouble;

/**
 * What a pump's nameplate says of its supply.
 *
 * @param ratedPowerW electrical input that it is rated for, W, above 0, where known
 * @param voltageV of the supply, V, above 0, where known
 * @param powerFactor real power over apparent power, above 0 to 1, where known
 * @param phases of the supply, 1 or 3
 */
public record Nameplate(
    OptionalDouble ratedPowerW, OptionalDouble voltageV, OptionalDouble powerFactor, int phases) {
  /** Nothing said: one phase, as common for garden pumps. */
  public static final Nameplate NONE =
      new Nameplate(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 1);

  /** The greatest voltage that is believed, V. */
  public static final double GREATEST_VOLTAGE_V = 1000;

  public Nameplate {
    if (!(ratedPowerW.orElse(1) > 0) || !(voltageV.orElse(1) > 0)) {
      throw new IllegalArgumentException("a nameplate's power and voltage must be above 0");
    }
    if (!(powerFactor.orElse(1) > 0 && powerFactor.orElse(1) <= 1)) {
      throw new IllegalArgumentException("a power factor must be above 0 and up to 1");
    }
    if (phases != 1 && phases != 3) {
      throw new IllegalArgumentException("a supply has 1 or 3 phases, not " + phases);
    }
  }

  /** The same on a supply of another voltage, V. */
  public Nameplate on(double volts) {
    return new Nameplate(ratedPowerW, OptionalDouble.of(volts), powerFactor, phases);
  }
}
