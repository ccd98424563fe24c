package rillwright.solver.stream;

/**
 * Water lost from all wet surface.
 *
 * @param evaporationMPerS depth that evaporates in a second, m/s, 0 or more
 * @param byWeather whether that was reckoned from the weather and the temperature of the water
 * @param splash lost by splash, as a share of what evaporates, 0 or more
 */
public record WaterLoss(double evaporationMPerS, boolean byWeather, double splash) {
  private static final double SECONDS_PER_DAY = 86400;

  public WaterLoss {
    if (!(evaporationMPerS >= 0 && splash >= 0)) {
      throw new IllegalArgumentException("evaporation and splash must be 0 or more");
    }
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
