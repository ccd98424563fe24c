package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Falls and outlets that get less than their wish, much more, or nothing. */
final class WishDetector implements Detector {
  /** More than this over a wish is worth throttling, share; common practice, no source. */
  private static final double TOO_MUCH_SHARE = 0.25;

  /** A lack that is no whole percent, share. */
  private static final double HARDLY_ANY_SHARE = 0.005;

  /**
   * A fall that gets less than its wish.
   *
   * @param runsShort whether nothing is shut or starved, so that more pump or pipe would help
   * @param pumped whether there is a pump
   */
  record UnderWish(
      String at, double flowM3PerS, double wantM3PerS, boolean runsShort, boolean pumped)
      implements Finding {
    @Override
    public String code() {
      return "under-wish";
    }

    @Override
    public String message(Wording wording) {
      String what =
          flowM3PerS == 0
              ? "No water reaches \""
                  + at
                  + "\"; "
                  + wording.writtenFlow(wantM3PerS)
                  + " are wished."
              : "\""
                  + at
                  + "\" gets "
                  + wording.flow(flowM3PerS)
                  + ", "
                  + shortBy(wording)
                  + " short of the "
                  + wording.writtenFlow(wantM3PerS)
                  + " wished.";
      return runsShort
          ? what
              + " A larger pipe, fewer losses or "
              + (pumped ? "a stronger pump" : "more difference in level")
              + " would help."
          : what;
    }

    private String shortBy(Wording wording) {
      double lack = 1 - flowM3PerS / wantM3PerS;
      return lack < HARDLY_ANY_SHARE ? "less than 1 %" : wording.share(lack);
    }
  }

  /**
   * A fall that gets much more than its wish.
   *
   * @param pumped whether that costs watts
   */
  record OverWish(String at, double flowM3PerS, double wantM3PerS, boolean pumped)
      implements Finding {
    @Override
    public String code() {
      return "over-wish";
    }

    @Override
    public String message(Wording wording) {
      return "\""
          + at
          + "\" gets "
          + wording.flow(flowM3PerS)
          + ", "
          + wording.share(flowM3PerS / wantM3PerS - 1)
          + " more than the "
          + wording.writtenFlow(wantM3PerS)
          + " wished. Close its valve a little"
          + (pumped
              ? ", or look at a smaller or slower pump: what is too much costs watts all year."
              : ".");
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
        findings.add(
            new UnderWish(name, flow, want, flow > 0 && isFree(state), state.network().isPumped()));
      } else if (want > 0 && flow > (1 + TOO_MUCH_SHARE) * want) {
        findings.add(new OverWish(name, flow, want, state.network().isPumped()));
      } else if (want == 0 && flow == 0 && point.point().spill().isPresent()) {
        findings.add(new Dry(name));
      }
    }
    return findings;
  }

  private static boolean isFree(SteadyState state) {
    return !state.starves() && !Blockage.isAnywhereIn(state.network());
  }
}
