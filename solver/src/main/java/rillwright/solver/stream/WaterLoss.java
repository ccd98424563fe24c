package rillwright.solver.stream;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;
import rillwright.solver.water.Water;

/**
 * Water lost from all wet surface.
 *
 * @param evaporationMPerS depth that evaporates in a second, m/s, 0 or more
 * @param byWeather whether that was computed from the weather and the temperature of the water
 * @param asWarmAsAirMPerS what would evaporate were the water as warm as the air, m/s, where the
 *     temperature of the water is only assumed; empty where it is known or does not enter
 * @param splash lost by splash, as a share of what evaporates, 0 or more
 */
public record WaterLoss(
    double evaporationMPerS, boolean byWeather, OptionalDouble asWarmAsAirMPerS, double splash) {
  /** So many times as much changes the days enough to say so; common practice, no source. */
  private static final double MUCH_MORE = 1.25;

  private static final double SECONDS_PER_DAY = 86400;

  public WaterLoss {
    if (!(evaporationMPerS >= 0 && splash >= 0)) {
      throw new IllegalArgumentException("evaporation and splash must be 0 or more");
    }
  }

  /** Where the temperature of the water is known or does not enter. */
  public WaterLoss(double evaporationMPerS, boolean byWeather, double splash) {
    this(evaporationMPerS, byWeather, OptionalDouble.empty(), splash);
  }

  /**
   * A warning where the water is taken as colder than such air makes it, so that much more would
   * evaporate; empty if all is well.
   */
  public Optional<Finding> coldWaterAssumed() {
    double warm = asWarmAsAirMPerS.orElse(0);
    boolean matters = evaporationMPerS > 0 && warm > MUCH_MORE * evaporationMPerS;
    return matters ? Optional.of(coldWaterAssumed(warm)) : Optional.empty();
  }

  private Finding coldWaterAssumed(double warmMPerS) {
    return Finding.of(
            Severity.ADVICE,
            "water-temperature-assumed",
            "evaporation",
            "The file does not say how warm the water is: with "
                + (int) Water.USUAL_TEMPERATURE_C
                + " C (68 F) taken, ")
        .depth("evaporationPerDay", evaporationMPerDay())
        .then(" a day evaporate. In water as warm as that air it would be ")
        .depth("evaporationPerDayAsWarmAsAir", warmMPerS * SECONDS_PER_DAY)
        .then(", and the days until the pump draws air only ")
        .share("shareOfDays", evaporationMPerS / warmMPerS)
        .then(" of those shown.")
        .thenHint();
  }

  /** Depth that evaporates in a day, m. */
  public double evaporationMPerDay() {
    return evaporationMPerS * SECONDS_PER_DAY;
  }

  /** Depth lost in a second, splash included, m/s. */
  public double depthMPerS() {
    return evaporationMPerS * (1 + splash);
  }
}
