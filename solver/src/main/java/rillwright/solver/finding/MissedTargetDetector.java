package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Falls and outlets that get less than their target, much more, or nothing. */
final class MissedTargetDetector implements Detector {
  private static final String UNDER = "under-target";

  /** More than this over a target is worth throttling, share; common practice, no source. */
  private static final double TOO_MUCH_SHARE = 0.25;

  /** A lack that is no whole percent, share. */
  private static final double HARDLY_ANY_SHARE = 0.005;

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (PointState point : state.points()) {
      String name = point.point().name().value();
      double target = point.point().targetM3PerS().orElse(0);
      double flow = point.outflowM3PerS();
      if (point.isUnderTarget()) {
        findings.add(underTarget(name, flow, target));
      } else if (target > 0 && flow > (1 + TOO_MUCH_SHARE) * target) {
        findings.add(overTarget(name, flow, target, state.network().isPumped()));
      } else if (target == 0 && flow == 0 && point.point().spill().isPresent()) {
        findings.add(dry(name));
      }
    }
    return findings;
  }

  /** A fall that gets less than its target. */
  private static Finding underTarget(String at, double flowM3PerS, double targetM3PerS) {
    return flowM3PerS == 0
        ? Finding.of(Severity.PROBLEM, UNDER, at, "No water reaches \"" + at + "\"; its target is ")
            .writtenFlow("target", targetM3PerS)
            .then(".")
        : shortOf(
            Finding.of(Severity.PROBLEM, UNDER, at, "\"" + at + "\" gets ")
                .flow("flow", flowM3PerS)
                .then(", "),
            1 - flowM3PerS / targetM3PerS,
            targetM3PerS);
  }

  private static Finding shortOf(Finding under, double lack, double targetM3PerS) {
    return under
        .figure(
            "lack",
            lack,
            Figure.Unit.ONE,
            wording -> lack < HARDLY_ANY_SHARE ? "less than 1 %" : wording.share(lack))
        .then(" short of the ")
        .writtenFlow("target", targetM3PerS)
        .then(" target.");
  }

  /**
   * A fall that gets much more than its target.
   *
   * @param pumped whether that costs watts
   */
  private static Finding overTarget(
      String at, double flowM3PerS, double targetM3PerS, boolean pumped) {
    return Finding.of(Severity.ADVICE, "over-target", at, "\"" + at + "\" gets ")
        .flow("flow", flowM3PerS)
        .then(", ")
        .share("excess", flowM3PerS / targetM3PerS - 1)
        .then(" more than the ")
        .writtenFlow("target", targetM3PerS)
        .then(" target. Throttle its valve")
        .then(
            pumped
                ? ", or look at a smaller or slower pump: the excess costs power all year."
                : ".");
  }

  /** A fall without a target that runs dry. */
  private static Finding dry(String at) {
    return Finding.of(Severity.PROBLEM, "dry", at, "No water reaches \"" + at + "\".");
  }
}
