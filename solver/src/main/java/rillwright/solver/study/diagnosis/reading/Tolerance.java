package rillwright.solver.study.diagnosis.reading;

/**
 * How closely something is read: half the width of a 95 % interval.
 *
 * @param absolute in the unit of the reading, 0 or more
 * @param share of what is read, 0 or more
 */
public record Tolerance(double absolute, double share) {
  /** The usual one of a flow; as all that follow common practice, no source. */
  public static final Tolerance FLOW = ofShare(0.07);

  /** Of a ruler in running water. */
  public static final Tolerance RULER = of(0.002);

  /** Of a gauge of 15 psi or 1 bar. */
  public static final Tolerance GAUGE = of(1700);

  /** Of a level, or of how far one is below another. */
  public static final Tolerance LEVEL = of(0.013);

  /** Of a meter's power. */
  public static final Tolerance POWER = ofShare(0.05);

  /** What a job differs from its drawing when nothing is wrong, by what it was built for. */
  private static final double MODEL_SHARE = 0.01;

  public Tolerance {
    if (!(absolute >= 0 && share >= 0 && absolute + share > 0)) {
      throw new IllegalArgumentException("a tolerance must be greater than 0");
    }
  }

  /** In the unit of the reading. */
  public static Tolerance of(double absolute) {
    return new Tolerance(absolute, 0);
  }

  /** As a share of what is read. */
  public static Tolerance ofShare(double share) {
    return new Tolerance(0, share);
  }

  /** Half the width of the 95 % interval at a value. */
  public double halfWidthAt(double value) {
    return absolute + share * Math.abs(value);
  }

  /** Standard deviation of the instrument at a value. */
  public double instrumentDeviationAt(double value) {
    return halfWidthAt(value) / 2;
  }

  /**
   * Standard deviation of a reading.
   *
   * @param predicted what should be read
   * @param asBuilt what would be read as built, counted from where it is nothing
   */
  public double deviationAt(double predicted, double asBuilt) {
    double least = 1e-6 * Math.max(Math.abs(predicted), Math.abs(asBuilt)) + 1e-9;
    return Math.max(least, Math.hypot(instrumentDeviationAt(predicted), MODEL_SHARE * asBuilt));
  }
}
