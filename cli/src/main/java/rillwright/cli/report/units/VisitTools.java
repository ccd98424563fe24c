package rillwright.cli.report.units;

/**
 * The words for what a crew carries to measure with.
 *
 * @param bucket that catches a flow
 * @param barrel that catches a larger one
 * @param pool that is bailed down and fills up
 * @param ruler a ruler or tape
 * @param rulerError how far a reading by it may be off
 * @param spacing of readings along a crest
 * @param trenchDepth how deep pipe is usually laid
 * @param still the most that a level at rest changes in an hour
 */
public record VisitTools(
    String bucket,
    String barrel,
    String pool,
    Ruler ruler,
    String rulerError,
    String spacing,
    String trenchDepth,
    String still) {

  static final VisitTools US =
      new VisitTools(
          "5 gal bucket",
          "32 gal barrel",
          "10 ft2 bailed down 4 in",
          Ruler.SIXTEENTHS,
          "1/16 in",
          "4 to 6 in",
          "12 to 18 in",
          "1/16 in");

  static final VisitTools METRIC =
      new VisitTools(
          "20 L bucket",
          "120 L barrel",
          "1 m2 bailed down 100 mm",
          Ruler.MILLIMETRES,
          "2 mm",
          "100 to 150 mm",
          "300 to 450 mm",
          "1 mm");
}
