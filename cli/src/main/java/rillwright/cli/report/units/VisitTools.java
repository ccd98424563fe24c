package rillwright.cli.report.units;

/**
 * The words for what a crew carries to measure with.
 *
 * @param bucket that catches a flow
 * @param barrel that catches a larger one
 * @param pool that is bailed down and fills up
 * @param ruler a ruler or tape
 */
public record VisitTools(String bucket, String barrel, String pool, Ruler ruler) {

  static final VisitTools US =
      new VisitTools("5 gal bucket", "32 gal barrel", "10 ft2 bailed down 4 in", Ruler.SIXTEENTHS);

  static final VisitTools METRIC =
      new VisitTools("20 L bucket", "120 L barrel", "1 m2 bailed down 100 mm", Ruler.MILLIMETRES);
}
