package rillwright.solver.trial;

/**
 * Speeds at which a pump may run, as shares of the speed of its published curve.
 *
 * @param least above 0
 * @param greatest not below the least
 */
public record SpeedBand(double least, double greatest) {
  public SpeedBand {
    if (!(least > 0) || !(greatest >= least) || Double.isInfinite(greatest)) {
      throw new IllegalArgumentException("speeds of " + least + " to " + greatest);
    }
  }

  /** Full speed, or the speed of the band that is nearest to it. */
  double nearestToFull() {
    return Math.min(greatest, Math.max(least, 1));
  }
}
