package rillwright.solver.law.minor;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Loss coefficient K of a valve against how far it is open: log K on straight lines between
 * published points, the last slope beyond.
 *
 * <p>Source: a chemical engineers' handbook's table of additional frictional loss (seen as a
 * reproduction): plug cock, butterfly and gate valve; gates differ much between books. The loss of
 * the fully open ball and butterfly valve is common practice, no source.
 */
@SuppressWarnings("ImmutableEnumChecker") // the arrays are never handed out nor written
public enum ValveTravel {
  /** Ball or plug valve; the handle turns 90°. Points in degrees from open. */
  BALL(
      "ball",
      true,
      new double[] {0, 5, 10, 20, 40, 60},
      new double[] {0.05, 0.05, 0.29, 1.56, 17.3, 206}),
  /** Butterfly valve; the handle turns 90°. Points in degrees from open. */
  BUTTERFLY(
      "butterfly",
      true,
      new double[] {0, 5, 10, 20, 40, 60},
      new double[] {0.24, 0.24, 0.52, 1.54, 10.8, 118}),
  /** Gate valve. Points in share of the stem's lift that is closed. */
  GATE("gate", false, new double[] {0, 0.25, 0.5, 0.75}, new double[] {0.17, 0.9, 4.5, 24});

  private static final double QUARTER_TURN_DEGREES = 90;
  private static final double ROUNDING = 1e-12;

  /** Short of shut by no more than anyone could set, a share of the travel. */
  private static final double LEAST_OPENING = 1e-6;

  private final String word;
  private final boolean turns;
  private final double[] closed;
  private final double[] lossCoefficient;

  ValveTravel(String word, boolean turns, double[] closed, double[] lossCoefficient) {
    this.word = word;
    this.turns = turns;
    this.closed = closed;
    this.lossCoefficient = lossCoefficient;
  }

  /** The type's word in project files. */
  public String word() {
    return word;
  }

  /** Whether its handle turns through a right angle, so that an opening is an angle. */
  public boolean turns() {
    return turns;
  }

  /**
   * A point of a published table.
   *
   * @param openShare share of the handle's or stem's travel, 0 (shut) to 1 (open)
   * @param lossCoefficient K there, dimensionless
   */
  public record TravelPoint(double openShare, double lossCoefficient) {}

  /** The published table, from open towards shut. */
  public List<TravelPoint> publishedPoints() {
    return IntStream.range(0, closed.length)
        .mapToObj(i -> new TravelPoint(1 - closed[i] / travel(), lossCoefficient[i]))
        .toList();
  }

  /** Whether its loss at an opening lies within the published table, not beyond its end. */
  public boolean isPublishedAt(double openShare) {
    return (1 - openShare) * travel() <= closed[closed.length - 1] + ROUNDING;
  }

  /** The least opening of the published table, a share of the travel. */
  public double leastPublishedOpening() {
    return 1 - closed[closed.length - 1] / travel();
  }

  /**
   * How far the handle stands from open, degrees, at an opening; meaningful where {@link #turns()}.
   */
  public static double degreesFromOpen(double openShare) {
    return QUARTER_TURN_DEGREES * (1 - openShare);
  }

  /**
   * K at an opening, dimensionless; infinite when shut.
   *
   * @param openShare share of the handle's or stem's travel, 0 (shut) to 1 (open)
   */
  public double lossCoefficientAt(double openShare) {
    if (openShare <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    return lossCoefficientWhereClosed(turns ? degreesFromOpen(openShare) : 1 - openShare);
  }

  private double lossCoefficientWhereClosed(double at) {
    int after = 1;
    while (after < closed.length - 1 && at > closed[after]) {
      after++;
    }
    double t = (at - closed[after - 1]) / (closed[after] - closed[after - 1]);
    double logBefore = Math.log(lossCoefficient[after - 1]);
    double logAfter = Math.log(lossCoefficient[after]);
    return Math.exp(logBefore + t * (logAfter - logBefore));
  }

  /** The greatest K before it is shut, dimensionless: where the last slope ends. */
  public double greatestLossCoefficient() {
    return lossCoefficientWhereClosed(travel());
  }

  /**
   * The opening at a K: share of the travel, a millionth to 1; the widest where several have it.
   *
   * @param k dimensionless, not below that of the open valve nor above {@link
   *     #greatestLossCoefficient()}, but for what rounding does
   */
  public double openShareAt(double k) {
    int after = 1;
    while (after < closed.length - 1 && k > lossCoefficient[after] * (1 + ROUNDING)) {
      after++;
    }
    double rise = Math.log(lossCoefficient[after] / lossCoefficient[after - 1]);
    double t = rise == 0 ? 0 : Math.log(k / lossCoefficient[after - 1]) / rise;
    double at = closed[after - 1] + t * (closed[after] - closed[after - 1]);
    return Math.min(1, Math.max(LEAST_OPENING, 1 - at / travel()));
  }

  /** The whole way from open to shut, in the unit of its points. */
  private double travel() {
    return turns ? QUARTER_TURN_DEGREES : 1;
  }
}
