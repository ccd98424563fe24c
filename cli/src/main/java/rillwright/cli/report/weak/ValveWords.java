package rillwright.cli.report.weak;

import rillwright.cli.report.HandleWords;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Valve;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/** Where a valve stands and where it should. */
public final class ValveWords {
  private ValveWords() {}

  /** The valve at which a cause sits. */
  public static Valve of(CauseId id, AsBuilt job) {
    return (Valve)
        job.network()
            .line(new LineName(id.at().orElseThrow()))
            .parts()
            .get(id.part().orElseThrow() - 1);
  }

  /** "stands 40° from open"; of one of which only a loss is known, what it adds. */
  static String at(Valve valve, double size, ShownUnits units) {
    return valve.loss() instanceof Valve.Opening filed
        ? "stands " + opening(filed.at(size), units)
        : CauseSizeWords.LOSS.of(size, 0, units);
  }

  /** "set it back to 50° from open". */
  public static String setBack(Valve valve, ShownUnits units) {
    return valve.loss() instanceof Valve.Opening filed
        ? "set it back to " + opening(filed, units)
        : "open it as it was";
  }

  private static String opening(Valve.Opening at, ShownUnits units) {
    return at.degreesFromOpen().isPresent()
        ? HandleWords.at(at.degreesFromOpen().getAsDouble())
        : units.share(at.open()) + " open";
  }
}
