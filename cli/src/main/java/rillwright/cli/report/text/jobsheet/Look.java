package rillwright.cli.report.text.jobsheet;

import rillwright.curves.unit.Unit;
import rillwright.solver.network.Fall;

/** How a fall looks, by its flow for each width of crest; common practice, no source. */
enum Look {
  NONE(0, ""),
  WET_FACE(25, "a wet face, drops"),
  TRICKLE(50, "a trickle down the face"),
  THIN(80, "a thin, light sheet"),
  FULL(150, "a full sheet"),
  HEAVY(200, "a heavy sheet, white water over rock"),
  ROARING(Double.POSITIVE_INFINITY, "white water, loud");

  private final double upToGphPerInch;
  private final String words;

  Look(double upToGphPerInch, String words) {
    this.upToGphPerInch = upToGphPerInch;
    this.words = words;
  }

  /** The look of a fall; none where it is dry or has no width. */
  static Look of(Fall fall, double flowM3PerS) {
    if (fall.widthM().isEmpty()) {
      return NONE;
    }
    double gphPerInch =
        Unit.GALLON_PER_HOUR.fromSi(flowM3PerS) / Unit.INCH.fromSi(fall.widthM().getAsDouble());
    for (Look look : values()) {
      if (gphPerInch <= look.upToGphPerInch) {
        return look;
      }
    }
    return ROARING;
  }

  String words() {
    return words;
  }
}
