package rillwright.cli.study.choice;

import java.util.List;
import rillwright.curves.trace.SystemCurve;
import rillwright.solver.study.pipechoice.RatedPipe;

/**
 * What the network needs with the best of the sizes that are tried.
 *
 * @param curves one for each of them, in their order
 */
public record SizeCurves(List<OfSize> curves) {
  /** More curves than these cannot be distinguished. */
  private static final int MOST = 8;

  public SizeCurves {
    curves = List.copyOf(curves);
  }

  /** The head that everything but the pump needs with sizes. */
  public record OfSize(RatedPipe rated, SystemCurve system) {}

  /** Traces the curves of an answer: some fifty balances each. */
  public static SizeCurves of(PipesAnswer answer) {
    List<RatedPipe> best = answer.choice().ranked().stream().limit(MOST).toList();
    double to = CandidateCurves.reachM3PerS(best.stream().map(rated -> rated.pump().trial()));
    return new SizeCurves(
        best.stream()
            .map(
                rated ->
                    new OfSize(
                        rated,
                        SystemCurve.trace(rated.option().network(), answer.duty().place(), to)))
            .toList());
  }

  /** The sizes. */
  public List<RatedPipe> best() {
    return curves.stream().map(OfSize::rated).toList();
  }
}
