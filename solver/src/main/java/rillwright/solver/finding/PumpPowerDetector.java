package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.law.pump.MoreOutThanIn;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.SteadyState;

/** Pumps whose data sheet cannot be right, because its output exceeds its input. */
final class PumpPowerDetector implements Detector {

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    Network network = state.network();
    for (Placed<Pump> pump : network.placed(Pump.class)) {
      MoreOutThanIn.find(pump.part().set().curve(), network.water().densityKgPerM3())
          .map(worst -> impossiblePower(pump.line().name().value(), pump.part().model(), worst))
          .ifPresent(findings::add);
    }
    return findings;
  }

  /** A pump with such a sheet. */
  private static Finding impossiblePower(String at, String model, MoreOutThanIn worst) {
    return Finding.of(
            Severity.PROBLEM,
            "impossible-power",
            at,
            "The power on the data sheet of \""
                + model
                + "\" in \""
                + at
                + "\" cannot be right: hydraulic output exceeds electrical input at ")
        .writtenFlow("flow", worst.flowM3PerS())
        .then(", ")
        .power("waterPower", worst.waterPowerW())
        .then(" of water from ")
        .power("power", worst.powerW())
        .then(". Check the units of the data sheet; watts and cost here are wrong by it.");
  }
}
