package rillwright.solver.study.diagnosis.cause.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/**
 * All causes at all places of a job, with how likely each is before any reading. The weights are
 * common practice, without a source: what crews find when they are called because a fall is weak.
 *
 * @param causes in the order in which they are reported; priors sum to 1
 */
public record CauseTable(List<Cause> causes) {
  /** Name of the cause that nothing is wrong. */
  public static final String NOTHING_WRONG = "nothing wrong";

  /** Name of what no cause in the list describes. */
  public static final String NONE_OF_THESE = "none of these";

  private static final double NONE_OF_THESE_WEIGHT = 0.04;

  public CauseTable {
    causes = normalised(causes);
  }

  private static List<Cause> normalised(List<Cause> causes) {
    double sum = causes.stream().mapToDouble(Cause::prior).sum();
    if (!(sum > 0)) {
      throw new IllegalArgumentException("one cause at least must be possible");
    }
    return causes.stream().map(cause -> cause.withPrior(cause.prior() / sum)).toList();
  }

  /** The kinds of causes, but for {@link #NONE_OF_THESE}. */
  static List<CauseKind> kinds() {
    return List.of(
        CloggedShare.net(),
        new SkimmerClogged(),
        AddedLoss.intakeCagePacked(),
        PumpFault.worn(),
        PumpFault.slow(),
        PumpFault.backwards(),
        PumpFault.air(),
        new LowVoltage(),
        new OtherPump(),
        new ValveMoved.Turned(),
        new ValveMoved.Throttled(),
        AddedLoss.checkValveStuck(),
        AddedLoss.hoseKinked(),
        AddedLoss.airAtHighPoint(),
        CloggedShare.filter(),
        new LossClogged(),
        new MatsClogged(),
        new PipeFault.Fouled(),
        new PipeFault.Smaller(),
        FallFault.moreLift(),
        new Leak.Buried(),
        new Leak.Bypass(),
        new IdlePump(),
        new PondLow(),
        new PondLeak(),
        FallFault.streamLeak(),
        FallFault.behindTheRocks(),
        FallFault.crestWider(),
        FallFault.crestNotLevel(),
        new NothingWrong());
  }

  /** The names of all causes that there may be. */
  public static List<String> names() {
    return Stream.concat(kinds().stream().map(CauseKind::name), Stream.of(NONE_OF_THESE))
        .distinct()
        .toList();
  }

  /**
   * The causes of a job: each place has the weight of its cause, all of them together a sum of 1.
   */
  public static CauseTable of(AsBuilt job) {
    List<Cause> causes = new ArrayList<>();
    for (CauseKind kind : kinds()) {
      for (Site site : kind.sitesIn(job)) {
        causes.add(
            new Cause(
                site.id(),
                kind.quantity(),
                kind.sizes(),
                kind.weight() * site.chances(),
                Optional.of(site.effect()),
                kind.name().equals(NOTHING_WRONG)));
      }
    }
    causes.add(
        new Cause(
            CauseId.anywhere(NONE_OF_THESE),
            Quantity.ofNoSize("any reading"),
            Optional.empty(),
            NONE_OF_THESE_WEIGHT,
            Optional.empty(),
            true));
    return new CauseTable(causes);
  }
}
