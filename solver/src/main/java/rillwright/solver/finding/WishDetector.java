package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Falls and outlets that get less than their wish, much more, or nothing. */
final class WishDetector implements Detector {
  private static final String UNDER = "under-wish";

  /** More than this over a wish is worth throttling, share; common practice, no source. */
  private static final double TOO_MUCH_SHARE = 0.25;

  /** A lack that is no whole percent, share. */
  private static final double HARDLY_ANY_SHARE = 0.005;

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (PointState point : state.points()) {
      String name = point.point().name().value();
      double want = point.point().wantM3PerS().orElse(0);
      double flow = point.outflowM3PerS();
      if (point.isUnderWish()) {
        findings.add(
            underWish(name, flow, want, flow > 0 && isFree(state), state.network().isPumped()));
      } else if (want > 0 && flow > (1 + TOO_MUCH_SHARE) * want) {
        findings.add(overWish(name, flow, want, state.network().isPumped()));
      } else if (want == 0 && flow == 0 && point.point().spill().isPresent()) {
        findings.add(dry(name));
      }
    }
    return findings;
  }

  private static boolean isFree(SteadyState state) {
    return !state.starves() && !Blockage.isAnywhereIn(state.network());
  }

  /**
   * A fall that gets less than its wish.
   *
   * @param runsShort whether nothing is shut or starved, so that more pump or pipe would help
   * @param pumped whether there is a pump
   */
  private static Finding underWish(
      String at, double flowM3PerS, double wantM3PerS, boolean runsShort, boolean pumped) {
    Finding under =
        flowM3PerS == 0
            ? Finding.of(Severity.PROBLEM, UNDER, at, "No water reaches \"" + at + "\"; ")
                .writtenFlow("want", wantM3PerS)
                .then(" are wished.")
            : shortOf(
                Finding.of(Severity.PROBLEM, UNDER, at, "\"" + at + "\" gets ")
                    .flow("flow", flowM3PerS)
                    .then(", "),
                1 - flowM3PerS / wantM3PerS,
                wantM3PerS);
    return runsShort
        ? under
            .then(" A larger pipe, fewer losses or ")
            .then(pumped ? "a stronger pump" : "more difference in level")
            .then(" would help.")
        : under;
  }

  private static Finding shortOf(Finding under, double lack, double wantM3PerS) {
    return under
        .figure(
            "lack",
            lack,
            Figure.Unit.ONE,
            wording -> lack < HARDLY_ANY_SHARE ? "less than 1 %" : wording.share(lack))
        .then(" short of the ")
        .writtenFlow("want", wantM3PerS)
        .then(" wished.");
  }

  /**
   * A fall that gets much more than its wish.
   *
   * @param pumped whether that costs watts
   */
  private static Finding overWish(String at, double flowM3PerS, double wantM3PerS, boolean pumped) {
    return Finding.of(Severity.ADVICE, "over-wish", at, "\"" + at + "\" gets ")
        .flow("flow", flowM3PerS)
        .then(", ")
        .share("excess", flowM3PerS / wantM3PerS - 1)
        .then(" more than the ")
        .writtenFlow("want", wantM3PerS)
        .then(" wished. Close its valve a little")
        .then(
            pumped
                ? ", or look at a smaller or slower pump: what is too much costs watts all year."
                : ".");
  }

  /** A fall without a wish that runs dry. */
  private static Finding dry(String at) {
    return Finding.of(Severity.PROBLEM, "dry", at, "No water reaches \"" + at + "\".");
  }
}
