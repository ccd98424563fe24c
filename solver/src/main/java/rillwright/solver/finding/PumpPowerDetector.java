package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.law.pump.MoreOutThanIn;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.SteadyState;

/** Pumps whose data sheet cannot be right, because more comes out than goes in. */
final class PumpPowerDetector implements Detector {

  /**
   * A pump with such a sheet.
   *
   * @param at its line
   * @param model its name
   */
  record ImpossiblePower(String at, String model, MoreOutThanIn worst) implements Finding {
    @Override
    public String code() {
      return "impossible-power";
    }

    @Override
    public String message(Wording wording) {
      return "The power on the data sheet of \""
          + model
          + "\" in \""
          + at
          + "\" cannot be right: more comes out than goes in at "
          + wording.writtenFlow(worst.flowM3PerS())
          + ", "
          + wording.power(worst.waterPowerW())
          + " of water from "
          + wording.power(worst.powerW())
          + ". Look at the sheet's units; what is told of watts and cost here is wrong with it.";
    }
  }

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    Network network = state.network();
    for (Line line : network.lines()) {
      for (Part part : line.parts()) {
        if (part instanceof Pump pump) {
          Optional<MoreOutThanIn> worst =
              MoreOutThanIn.find(pump.set().curve(), network.water().densityKgPerM3());
          worst.ifPresent(
              it -> findings.add(new ImpossiblePower(line.name().value(), pump.model(), it)));
        }
      }
    }
    return findings;
  }
}
