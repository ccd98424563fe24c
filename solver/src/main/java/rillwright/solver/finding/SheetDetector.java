package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Fall;
import rillwright.solver.steady.SteadyState;

/** Sheets over a crest too thin to hold together. */
final class SheetDetector implements Detector {

  /**
   * Head upstream of a crest below which the sheet clings to the rock; common practice, no source.
   */
  private static final double THINNEST_M = 0.00635;

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (Fall fall : state.network().points(Fall.class)) {
      double flow = state.point(fall.name()).outflowM3PerS();
      double head = fall.weir().headAt(Math.max(0, flow));
      if (flow > 0 && head < THINNEST_M) {
        findings.add(thinSheet(fall.name().value(), head));
      }
    }
    return findings;
  }

  /** A sheet too thin to hold together. */
  private static Finding thinSheet(String at, double crestHeadM) {
    return Finding.of(Severity.ADVICE, "thin-sheet", at, "The water over \"" + at + "\" is only ")
        .depth("crestHead", crestHeadM)
        .then(
            " deep: the sheet breaks up and runs back under the crest. A narrower crest or a sharp"
                + " drip edge helps more than flow. (Below about ")
        .depth("usualLeastCrestHead", THINNEST_M)
        .then(", common practice.)");
  }
}
