package rillwright.cli.report.choice;

import java.util.Optional;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.wording.PlainText;
import rillwright.solver.study.pipechoice.GravityPipe;
import rillwright.solver.study.pipechoice.GravityPipe.InCondition;
import rillwright.solver.study.pipechoice.GravityRun;

/** A verdict on sizes of pipe that water runs through of itself. */
public final class GravityWords {
  private final ShownUnits units;

  /** Words in units. */
  public GravityWords(ShownUnits units) {
    this.units = units;
  }

  /** A few words for a cell of a table. */
  public String brief(GravityPipe pipe) {
    return judged(pipe)
            .map(run -> brief(run) + VerdictWords.noValve(run.missingValves()))
            .orElse("no balance")
        + where(pipe);
  }

  /** The whole verdict, without a full stop. */
  public String full(GravityPipe pipe) {
    return judged(pipe).map(this::full).orElse("no balance") + where(pipe);
  }

  /** The whole verdict on a run, without a full stop. */
  public String full(InCondition condition) {
    return condition.run().map(this::full).orElse("no balance");
  }

  /** The verdict as a code. */
  public static String code(GravityPipe pipe) {
    return VerdictCode.ofRun(judged(pipe));
  }

  private static Optional<GravityRun> judged(GravityPipe pipe) {
    Optional<InCondition> worst = pipe.worstCondition();
    return worst.isPresent() ? worst.get().run() : Optional.of(pipe.run());
  }

  private static String where(GravityPipe pipe) {
    return pipe.worstCondition()
        .map(
            worst ->
                pipe.conditions().stream().allMatch(GravityWords::isWhole)
                    ? JudgedWords.EVERYWHERE
                    : JudgedWords.in(worst.name(), isWhole(worst)))
        .orElse("");
  }

  private static boolean isWhole(InCondition condition) {
    return condition.run().filter(run -> run.meetsTargets() && !run.isJustShort()).isPresent();
  }

  private String brief(GravityRun run) {
    if (!run.meetsTargets()) {
      return run.inUse().leastFraction() > 0 ? "falls short by " + lack(run) : "leaves a fall dry";
    }
    if (run.throttled().isEmpty()) {
      return run.isJustShort()
          ? VerdictWords.COUNTS + lack(run) + " under target"
          : "meets the target";
    }
    return run.isJustShort()
        ? VerdictWords.COUNTS + lack(run) + " under target when throttled"
        : "meets the target when throttled";
  }

  private String full(GravityRun run) {
    String fall = PlainText.quoted(run.inUse().worst().value());
    if (!run.meetsTargets()) {
      return run.inUse().leastFraction() > 0
          ? "falls short by " + lack(run) + " at " + fall
          : "leaves " + fall + " dry";
    }
    return brief(run)
        + (run.isJustShort() ? " at " + fall : "")
        + VerdictWords.missing(run.missingValves());
  }

  private String lack(GravityRun run) {
    return VerdictWords.lack(run.inUse().leastFraction(), units);
  }
}
