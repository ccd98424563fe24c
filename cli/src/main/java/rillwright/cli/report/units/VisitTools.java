package rillwright.cli.report.units;

import rillwright.curves.unit.Unit;

/**
 * What a crew carries to measure with, in round sizes of its own units; common practice, no source.
 *
 * @param bucketM3 a bucket, m³
 * @param bucket its words
 * @param barrelM3 a barrel, m³
 * @param barrel its words
 * @param bucketUpToM3PerS the flow up to which a bucket does, m³/s
 * @param poolAreaM2 area of a round pool to compute a refill with, m²
 * @param poolDepthM how far it is bailed down, m
 * @param pool its words
 * @param ruler a ruler or tape
 */
public record VisitTools(
    double bucketM3,
    String bucket,
    double barrelM3,
    String barrel,
    double bucketUpToM3PerS,
    double poolAreaM2,
    double poolDepthM,
    String pool,
    Ruler ruler) {

  static final VisitTools US =
      new VisitTools(
          Unit.GALLON.toSi(5),
          "5 gal bucket",
          Unit.GALLON.toSi(32),
          "32 gal barrel",
          Unit.GALLON_PER_HOUR.toSi(4000),
          Unit.SQUARE_FOOT.toSi(10),
          Unit.INCH.toSi(4),
          "10 ft2 bailed down 4 in",
          Ruler.SIXTEENTHS);

  static final VisitTools METRIC =
      new VisitTools(
          Unit.LITRE.toSi(20),
          "20 L bucket",
          Unit.LITRE.toSi(120),
          "120 L barrel",
          Unit.CUBIC_METRE_PER_HOUR.toSi(15),
          1,
          0.1,
          "1 m2 bailed down 100 mm",
          Ruler.MILLIMETRES);
}
