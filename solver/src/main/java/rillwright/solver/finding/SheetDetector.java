package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Fall;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Sheets over a crest too thin to hold together. */
final class SheetDetector implements Detector {
  /**
   * Head upstream of a crest below which the sheet clings to the rock; common practice, no source.
   */
  private static final double THINNEST_M = 0.00635;

  /** A sheet too thin to hold together. */
  record ThinSheet(String at, double crestHeadM) implements Finding {
    @Override
    public String code() {
      return "thin-sheet";
    }

    @Override
    public String message(Wording wording) {
      return "The water over \""
          + at
          + "\" is only "
          + wording.depth(crestHeadM)
          + " deep: the sheet breaks up and runs back under the lip. A narrower crest or a sharp drip edge helps"
          + " more than flow. (Below about "
          + wording.depth(THINNEST_M)
          + ", common practice.)";
    }
  }

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (PointState point : state.points()) {
      if (point.point() instanceof Fall fall && point.outflowM3PerS() > 0) {
        double head = fall.weir().headAt(point.outflowM3PerS());
        if (head < THINNEST_M) {
          findings.add(new ThinSheet(fall.name().value(), head));
        }
      }
    }
    return findings;
  }
}
