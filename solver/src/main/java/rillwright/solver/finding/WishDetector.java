package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Falls and outlets that get less than their wish, or nothing. */
final class WishDetector implements Detector {
  /** A fall that gets less than its wish. */
  record UnderWish(String at, double flowM3PerS, double wantM3PerS) implements Finding {
    @Override
    public String code() {
      return "under-wish";
    }

    @Override
    public String message(Wording wording) {
      return "\""
          + at
          + "\" gets "
          + wording.flow(flowM3PerS)
          + ", "
          + wording.share(1 - flowM3PerS / wantM3PerS)
          + " short of the "
          + wording.flow(wantM3PerS)
          + " wished. A larger pipe, fewer losses, a stronger pump or a narrower crest would help.";
    }
  }

  /** A fall without a wish that runs dry. */
  record Dry(String at) implements Finding {
    @Override
    public String code() {
      return "dry";
    }

    @Override
    public String message(Wording wording) {
      return "No water reaches \"" + at + "\".";
    }
  }

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (PointState point : state.points()) {
      String name = point.point().name().value();
      double want = point.point().wantM3PerS().orElse(0);
      double flow = point.outflowM3PerS();
      if (point.isUnderWish()) {
        findings.add(new UnderWish(name, flow, want));
      } else if (want == 0 && flow == 0 && point.point().spill().isPresent()) {
        findings.add(new Dry(name));
      }
    }
    return findings;
  }
}
