package rillwright.solver.study.diagnosis.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rillwright.solver.progress.Progress;
import rillwright.solver.progress.Steps;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.evidence.AnyReading;
import rillwright.solver.study.diagnosis.evidence.Hypothesis;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.evidence.SweptCause;
import rillwright.solver.study.diagnosis.evidence.SweptCause.Unnoticed;

/**
 * The causes of a job swept over their sizes, as far as a bound on the work allows: those that may
 * go unnoticed first, then by their weight before any reading, the greatest first. The bound is so
 * much for any job and so much for each of its lines, counted in Newton steps times lines. So the
 * work grows with the lines and not with their square; causes beyond are left untried.
 *
 * @param hypotheses in the order of the table, what no cause in the list describes among them
 * @param untried in the order in which they would have been tried
 */
record Sweeping(List<Hypothesis> hypotheses, List<Cause> untried) {
  /** Newton steps times lines for any job: seconds. All causes of forty lines mostly take less. */
  private static final double ANYWAY = 500_000;

  /** The same for each line of it. */
  private static final double A_LINE = 60_000;

  /** Causes swept side by side before the work is counted, so that no clock decides. */
  private static final int AT_ONCE = 8;

  Sweeping {
    hypotheses = List.copyOf(hypotheses);
    untried = List.copyOf(untried);
  }

  /**
   * Sweeps them.
   *
   * @param progress receives how many causes are done with
   */
  static Sweeping of(Scope scope, CauseTable table, Unnoticed unnoticed, Progress progress) {
    double most = ANYWAY + A_LINE * scope.job().network().lines().size();
    return of(scope, table, unnoticed, progress, most);
  }

  /** The same with another bound, Newton steps times lines. */
  static Sweeping of(
      Scope scope, CauseTable table, Unnoticed unnoticed, Progress progress, double most) {
    Steps steps = new Steps(progress, table.causes().size());
    List<Cause> inOrder =
        table.causes().stream()
            .filter(cause -> !cause.isUnnamed())
            .sorted(
                Comparator.comparing((Cause cause) -> !cause.mayGoUnnoticed())
                    .thenComparing(cause -> -cause.prior()))
            .toList();
    Map<Cause, Hypothesis> tried = new HashMap<>();
    double end = scope.linesSolved() + most;
    for (int i = 0; i < inOrder.size() && scope.linesSolved() < end; i += AT_ONCE) {
      int next = Math.min(i + AT_ONCE, inOrder.size());
      List<SweptCause> swept =
          inOrder.subList(i, next).parallelStream()
              .map(cause -> swept(cause, scope, unnoticed, steps))
              .toList();
      swept.forEach(one -> tried.put(one.cause(), one));
    }
    List<Cause> untried = inOrder.stream().filter(cause -> !tried.containsKey(cause)).toList();
    List<Hypothesis> hypotheses = new ArrayList<>();
    for (Cause cause : table.causes()) {
      if (cause.isUnnamed()) {
        hypotheses.add(new AnyReading(cause, scope));
      } else if (tried.containsKey(cause)) {
        hypotheses.add(tried.get(cause));
      }
    }
    return new Sweeping(hypotheses, untried);
  }

  private static SweptCause swept(Cause cause, Scope scope, Unnoticed unnoticed, Steps steps) {
    steps.done(0);
    SweptCause swept = SweptCause.of(cause, cause.effect().orElseThrow(), scope, unnoticed);
    steps.done(1);
    return swept;
  }
}
