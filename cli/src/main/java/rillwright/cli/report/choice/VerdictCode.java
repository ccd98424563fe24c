package rillwright.cli.report.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rillwright.solver.study.pipechoice.GravityRun;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.Verdict.Kind;

/** Verdicts as short stable codes, for programs. */
public final class VerdictCode {
  private static final String DRAWS_AIR = "draws-air";
  private static final String LEAVES_DRY = "leaves-dry";
  private static final String NO_BALANCE = "no-balance";

  private VerdictCode() {}

  /** All that there are. */
  public static List<String> all() {
    List<String> all = new ArrayList<>();
    Arrays.stream(Kind.values()).map(VerdictCode::of).forEach(all::add);
    all.addAll(List.of(DRAWS_AIR, LEAVES_DRY, NO_BALANCE));
    return all;
  }

  private static String of(Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Of a pump; empty where nothing can flow with it. */
  public static String ofPump(Optional<PumpTrial> trial) {
    return trial
        .map(PumpTrial::verdict)
        .map(
            verdict ->
                verdict.kind() == Kind.FALLS_SHORT && verdict.leastFraction() >= 1
                    ? DRAWS_AIR
                    : of(verdict.kind()))
        .orElse(NO_BALANCE);
  }

  /** Of pipes through which water runs of itself; empty where nothing can flow. */
  public static String ofRun(Optional<GravityRun> run) {
    return run.map(VerdictCode::of).orElse(NO_BALANCE);
  }

  private static String of(GravityRun run) {
    if (!run.meetsTargets()) {
      return run.inUse().leastFraction() > 0 ? of(Kind.FALLS_SHORT) : LEAVES_DRY;
    }
    if (run.throttled().isPresent()) {
      return of(run.isJustShort() ? Kind.THROTTLED_JUST_SHORT : Kind.THROTTLED);
    }
    return of(run.isJustShort() ? Kind.JUST_SHORT : Kind.MEETS_TARGET);
  }
}
