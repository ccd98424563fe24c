package rillwright.cli.study.jobsheet.card;

import rillwright.cli.file.Show;
import rillwright.curves.unit.Unit;

/**
 * What a crew carries to measure with, in round sizes of its own units; common practice, no source.
 *
 * @param bucketM3 a bucket, m³
 * @param barrelM3 a barrel, m³
 * @param bucketUpToM3PerS the flow up to which a bucket does, m³/s
 * @param poolAreaM2 area of a round pool to time a refill with, m²
 * @param poolDepthM how far it is bailed down, m
 */
public record CrewTools(
    double bucketM3,
    double barrelM3,
    double bucketUpToM3PerS,
    double poolAreaM2,
    double poolDepthM) {
  private static final CrewTools US =
      new CrewTools(
          Unit.GALLON.toSi(5),
          Unit.GALLON.toSi(32),
          Unit.GALLON_PER_HOUR.toSi(4000),
          Unit.SQUARE_FOOT.toSi(10),
          Unit.INCH.toSi(4));

  private static final CrewTools METRIC =
      new CrewTools(
          Unit.LITRE.toSi(20), Unit.LITRE.toSi(120), Unit.CUBIC_METRE_PER_HOUR.toSi(15), 1, 0.1);

  /** Those of a crew that works in some units. */
  public static CrewTools of(Show show) {
    return show == Show.METRIC ? METRIC : US;
  }
}
