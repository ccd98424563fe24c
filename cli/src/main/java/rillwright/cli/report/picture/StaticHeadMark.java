package rillwright.cli.report.picture;

import java.util.Optional;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.chart.content.HeadMark;
import rillwright.curves.trace.SystemCurve;

/** The static head in pictures of system curves. */
final class StaticHeadMark {
  /** Less than this nobody sees in a picture, m. */
  private static final double HARDLY_M = 0.005;

  private StaticHeadMark() {}

  /** The static head, with what a check valve takes besides to open. */
  static Optional<HeadMark> of(SystemCurve system, ShownUnits units) {
    return system
        .staticHead()
        .map(
            head ->
                new HeadMark(
                    head.headM(),
                    "static head "
                        + units.head(head.headM())
                        + (head.openingM() < HARDLY_M
                            ? ""
                            : "; check valves open at " + units.depth(head.openingM()) + " more")));
  }
}
