package rillwright.cli.study.choice;

import java.util.List;
import java.util.stream.Stream;
import rillwright.curves.trace.SystemCurve;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.RatedTrial;
import rillwright.solver.trial.SiteState;

/**
 * What the network needs, as far as the best of the pumps that are tried reach.
 *
 * @param best the best of them, in their order
 * @param asItStands the head that everything but the pump needs
 * @param states the same in each of the conditions that judge
 */
public record CandidateCurves(List<RatedTrial> best, SystemCurve asItStands, List<InState> states) {
  /** More curves than these cannot be distinguished. */
  private static final int MOST = 12;

  private static final double ROOM = 1.08;

  public CandidateCurves {
    best = List.copyOf(best);
    states = List.copyOf(states);
  }

  /** What the network needs in a condition. */
  public record InState(String condition, SystemCurve system) {}

  /** Traces the curves of an answer: some fifty balances each. */
  public static CandidateCurves of(PumpsAnswer answer) {
    List<RatedTrial> best = answer.choice().ranked().stream().limit(MOST).toList();
    double to = reachM3PerS(best.stream().map(RatedTrial::trial));
    PumpPlace place = answer.duty().place();
    return new CandidateCurves(
        best,
        SystemCurve.trace(answer.duty().network(), place, to),
        answer.states().stream().map(state -> inState(state, place, to)).toList());
  }

  private static InState inState(SiteState state, PumpPlace place, double toM3PerS) {
    return new InState(state.condition(), SystemCurve.trace(state.network(), place, toM3PerS));
  }

  /** A little more than what any of some pumps gives or its sheet covers. */
  static double reachM3PerS(Stream<PumpTrial> trials) {
    return ROOM
        * trials
            .mapToDouble(
                trial ->
                    Math.max(trial.set().publishedRangeM3PerS(), trial.operating().flowM3PerS()))
            .max()
            .orElseThrow();
  }
}
