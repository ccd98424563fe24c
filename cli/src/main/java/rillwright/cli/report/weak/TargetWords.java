package rillwright.cli.report.weak;

import java.util.List;
import java.util.stream.Collectors;
import rillwright.curves.wording.PlainText;
import rillwright.solver.steady.PointState;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/** What to do about a job that is as it was built: that depends on what was promised. */
public final class TargetWords {
  private TargetWords() {}

  /** A few sentences. */
  public static String of(AsBuilt job) {
    List<PointState> targeted =
        job.state().points().stream()
            .filter(point -> point.point().targetM3PerS().orElse(0) > 0)
            .toList();
    List<PointState> under = targeted.stream().filter(PointState::isUnderTarget).toList();
    List<PointState> over = targeted.stream().filter(TargetWords::isOverTarget).toList();
    String larger = job.network().isPumped() ? "larger pipe and at other pumps" : "larger pipe";
    if (targeted.isEmpty()) {
      return "The file has no \"target\": if more was agreed than it gives by the file, the job is"
          + " undersized; then look at "
          + larger
          + " before anyone digs or buys.";
    }
    if (under.isEmpty()) {
      return "By the file the job meets its targets: "
          + names(targeted)
          + (targeted.size() == 1 ? " gets its target." : " get their targets.")
          + " Show it with bucket and watch; more than that is a new job, not a repair.";
    }
    if (!over.isEmpty()) {
      return "The flow is badly balanced: by the file, "
          + names(over)
          + (over.size() == 1
              ? " gets more than its target and "
              : " get more than their targets and ")
          + names(under)
          + " less. Run \"rillwright balance\" for the valve openings.";
    }
    return "By the file it is undersized: "
        + names(under)
        + (under.size() == 1 ? " falls" : " fall")
        + " short of the target. Look at "
        + larger
        + " before anyone digs or buys.";
  }

  private static boolean isOverTarget(PointState point) {
    return point.outflowM3PerS() > point.point().targetM3PerS().orElseThrow();
  }

  private static String names(List<PointState> points) {
    return points.stream()
        .map(point -> PlainText.quoted(point.point().name().value()))
        .collect(Collectors.joining(" and "));
  }
}
