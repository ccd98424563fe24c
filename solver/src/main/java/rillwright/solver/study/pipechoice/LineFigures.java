package rillwright.solver.study.pipechoice;

import java.util.OptionalDouble;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Run;
import rillwright.solver.steady.LineState;

/**
 * What a pipe's size means for the water in it.
 *
 * @param velocityMPerS in the line's main bore, m/s; empty without a bore
 * @param frictionMPerM head lost in the line's runs for each metre of them, m; empty where the line
 *     carries nothing or has no run
 * @param holdUpM3 water in the line's runs, m³
 */
public record LineFigures(
    OptionalDouble velocityMPerS, OptionalDouble frictionMPerM, double holdUpM3) {

  /** The figures of a line. */
  public static LineFigures of(LineState line) {
    double length = 0;
    double loss = 0;
    double holdUp = 0;
    for (Placed<Run> placed : line.line().placed(Run.class)) {
      Run run = placed.part();
      length += run.lengthM();
      loss += Math.abs(line.parts().get(placed.index()).headLossM().orElse(0));
      holdUp += run.lengthM() * run.inside().areaM2();
    }
    boolean flows = length > 0 && line.flowM3PerS() != 0;
    return new LineFigures(
        line.velocityMPerS(),
        flows ? OptionalDouble.of(loss / length) : OptionalDouble.empty(),
        holdUp);
  }
}
