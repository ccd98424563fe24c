package rillwright.solver.law.minor;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Published loss coefficients K of a kind of valve against how far it is open; see {@link
 * ValveLoss} for what lies between.
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
   * @param opening share of the handle's or stem's travel, 0 (shut) to 1 (open)
   * @param lossCoefficient K there, dimensionless
   */
  public record TravelPoint(double opening, double lossCoefficient) {}

  /** The published table, from open towards shut. */
  public List<TravelPoint> publishedPoints() {
    return IntStream.range(0, closed.length)
        .mapToObj(i -> new TravelPoint(1 - closed[i] / travel(), lossCoefficient[i]))
        .toList();
  }

  /** Whether its loss at an opening lies within the published table, not beyond its end. */
  public boolean isPublishedAt(double opening) {
    return (1 - opening) * travel() <= closed[closed.length - 1] + ROUNDING;
  }

  /** The least opening of the published table, a share of the travel. */
  public double leastPublishedOpening() {
    return 1 - closed[closed.length - 1] / travel();
  }

  /** The published points whose K is not below one, from open towards shut. */
  List<ClosedPoint> pointsFrom(double least) {
    return IntStream.range(1, closed.length)
        .filter(i -> lossCoefficient[i] >= least)
        .mapToObj(i -> new ClosedPoint(closed[i], lossCoefficient[i]))
        .toList();
  }

  /** A point by how far the valve is closed, in the unit of its travel. */
  record ClosedPoint(double closed, double lossCoefficient) {}

  /**
   * How far the handle stands from open, degrees, at an opening; meaningful where {@link #turns()}.
   */
  public static double degreesFromOpen(double opening) {
    return QUARTER_TURN_DEGREES * (1 - opening);
  }

  /** The loss of a valve whose K is as published when it is open, too. */
  public ValveLoss published() {
    return new ValveLoss(this, lossCoefficient[0]);
  }

  /** How far it is closed, in the unit of its points, at an opening. */
  double closedAt(double opening) {
    return turns ? degreesFromOpen(opening) : 1 - opening;
  }

  /** The whole way from open to shut, in the unit of its points. */
  double travel() {
    return turns ? QUARTER_TURN_DEGREES : 1;
  }
}
