package rillwright.cli.study.choice;

import java.util.List;
import rillwright.curves.trace.SystemCurve;
import rillwright.solver.network.Network;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.pumping.Targets;
import rillwright.solver.study.pipechoice.RatedPipe;

/**
 * What the network needs with the best of the sizes that are tried.
 *
 * @param curves one for each of them, in their order
 * @param throttled whether valves hold all falls to one share of their targets: where several have
 *     a target, only that compares sizes by what each fall must get
 */
public record SizeCurves(List<OfSize> curves, boolean throttled) {
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
    PumpPlace place = answer.duty().place();
    boolean several = Targets.of(answer.duty().network()).falls().size() > 1;
    return new SizeCurves(
        best.stream()
            .map(
                rated -> {
                  Network network = rated.option().network();
                  return new OfSize(
                      rated,
                      several
                          ? SystemCurve.traceThrottled(network, place, to)
                          : SystemCurve.trace(network, place, to));
                })
            .toList(),
        several);
  }

  /** The sizes. */
  public List<RatedPipe> best() {
    return curves.stream().map(OfSize::rated).toList();
  }
}
