package rillwright.cli.report.weak;

import java.util.List;
import java.util.stream.Collectors;
import rillwright.curves.wording.PlainText;
import rillwright.solver.steady.PointState;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/** What to do about a job that is as it was built: that depends on what was promised. */
public final class WishWords {
  private WishWords() {}

  /** A few sentences. */
  public static String of(AsBuilt job) {
    List<PointState> wished =
        job.state().points().stream()
            .filter(point -> point.point().wantM3PerS().orElse(0) > 0)
            .toList();
    List<PointState> under = wished.stream().filter(PointState::isUnderWish).toList();
    List<PointState> over = wished.stream().filter(WishWords::isOverWish).toList();
    String larger = job.network().isPumped() ? "larger pipe and at other pumps" : "larger pipe";
    if (wished.isEmpty()) {
      return "The file tells no wish (\"want\"): if more was promised than it gives as built, it"
          + " was sold too small; then look at "
          + larger
          + " before anyone digs or buys.";
    }
    if (under.isEmpty()) {
      return "It gives what the file promises: as built, "
          + names(wished)
          + (wished.size() == 1 ? " gets its wish." : " get their wishes.")
          + " Show it with bucket and watch; more than that is a new job, not a repair.";
    }
    if (!over.isEmpty()) {
      return "It is shared badly: as built, "
          + names(over)
          + (over.size() == 1
              ? " gets more than its wish and "
              : " get more than their wishes and ")
          + names(under)
          + " less. \"rillwright balance\" tells how far to close which valve.";
    }
    return "It was sold too small: as built, "
        + names(under)
        + (under.size() == 1 ? " falls" : " fall")
        + " short of the wish. Look at "
        + larger
        + " before anyone digs or buys.";
  }

  private static boolean isOverWish(PointState point) {
    return point.outflowM3PerS() > point.point().wantM3PerS().orElseThrow();
  }

  private static String names(List<PointState> points) {
    return points.stream()
        .map(point -> PlainText.quoted(point.point().name().value()))
        .collect(Collectors.joining(" and "));
  }
}
