package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.Gravity;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.water.Atmosphere;

/**
 * Places where a pipe climbs high: whether the pump can start over them, and what the water there
 * is under.
 */
final class HighPointDetector implements Detector {

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    StartReach reach = StartReach.of(state);
    for (LineState line : state.lines()) {
      for (int i = 0; i < line.parts().size(); i++) {
        if (line.parts().get(i).part() instanceof HighPoint highPoint) {
          checkStart(state, reach, line, i, highPoint, findings);
          checkSuction(state, line, i, highPoint, findings);
        }
      }
    }
    return findings;
  }

  private static void checkStart(
      SteadyState state,
      StartReach startReach,
      LineState line,
      int index,
      HighPoint highPoint,
      List<Finding> findings) {
    OptionalDouble level = state.point(line.line().from()).drawnHeadM();
    if (level.isEmpty()) {
      return;
    }
    String name = line.line().name().value();
    double shutOff = 0;
    boolean pumpBefore = false;
    boolean pumpAfter = false;
    for (int i = 0; i < line.parts().size(); i++) {
      if (line.parts().get(i).part() instanceof Pump pump) {
        pumpBefore |= i < index;
        pumpAfter |= i > index;
        shutOff += i < index ? pump.set().publishedShutOffHeadM() : 0;
      }
    }
    double reach =
        pumpBefore
            ? level.getAsDouble() + shutOff
            : startReach.at(line.line().from()).orElse(Double.POSITIVE_INFINITY);
    if (pumpAfter && !pumpBefore && highPoint.elevationM() > level.getAsDouble()) {
      findings.add(beforePump(name, highPoint.elevationM() - level.getAsDouble()));
    } else if (highPoint.elevationM() >= reach) {
      findings.add(cannotStart(name, highPoint.elevationM(), reach));
    }
  }

  private static void checkSuction(
      SteadyState state, LineState line, int index, HighPoint highPoint, List<Finding> findings) {
    PartState part = line.parts().get(index);
    if (part.headBeforeM().isEmpty()) {
      return;
    }
    Network network = state.network();
    double velocityHead =
        highPoint.pipeBore().map(b -> b.velocityHeadAt(part.flowM3PerS())).orElse(0.0);
    double headroom = part.headBeforeM().getAsDouble() - highPoint.elevationM() - velocityHead;
    double pressure = network.water().densityKgPerM3() * Gravity.STANDARD_M_PER_S2 * headroom;
    if (pressure < 0) {
      double absolute = Atmosphere.pressurePa(network.siteElevationM()) + pressure;
      boolean boils = absolute <= network.water().vapourPressurePa();
      findings.add(
          underSuction(
              line.line().name().value(), pressure, boils, ventedFlow(state, line.line(), index)));
    }
  }

  /** The flow of the line if it ended in air at the high point. */
  private static OptionalDouble ventedFlow(SteadyState state, Line line, int index) {
    boolean pumpBefore = line.parts().subList(0, index).stream().anyMatch(Pump.class::isInstance);
    boolean forward = state.line(line.name()).flowM3PerS() > 0;
    Optional<SteadyState> vented =
        pumpBefore && forward ? VentedLine.stateOf(state.network(), line, index) : Optional.empty();
    return vented
        .map(after -> OptionalDouble.of(after.line(line.name()).flowM3PerS()))
        .orElse(OptionalDouble.empty());
  }

  /** A high point that the pump cannot reach to start. */
  private static Finding cannotStart(String at, double elevationM, double reachM) {
    return Finding.of(
            Severity.PROBLEM,
            "cannot-start-over-high-point",
            at,
            "To start, water must climb to the high point of \"" + at + "\" at ")
        .length("elevation", elevationM)
        .then("; the pump's published shut-off head reaches only ")
        .length("reach", reachM)
        .then(". Lower the high point or take a pump with more head.");
  }

  /** A high point before the pump, or one where the water is under suction. */
  private static Finding underSuction(
      String at, double pressurePa, boolean boils, OptionalDouble ventedFlowM3PerS) {
    Finding suction =
        Finding.of(
                boils ? Severity.PROBLEM : Severity.ADVICE,
                "high-point-under-suction",
                at,
                "At the high point of \"" + at + "\" the water is under suction (")
            .pressure("pressure", pressurePa)
            .then(" against the air): ")
            .then(
                boils
                    ? "so much that it boils there and the column breaks."
                    : "air comes out of it and gathers.");
    Finding vented =
        ventedFlowM3PerS.isPresent()
            ? suction
                .then(" If air gets in there, the line ends at that height and carries ")
                .flow("ventedFlow", ventedFlowM3PerS.getAsDouble())
                .then(".")
            : suction;
    return vented.then(" Take the pipe lower, or put a vent or a purge there.");
  }

  /** A high point between the water and the pump. */
  private static Finding beforePump(String at, double aboveWaterM) {
    return Finding.of(
            Severity.ADVICE, "high-point-before-pump", at, "The suction of \"" + at + "\" climbs ")
        .length("aboveWater", aboveWaterM)
        .then(
            " above the water that it draws from: the pump must be primed by hand or with a foot"
                + " valve at every start. Set the pump below the water instead.");
  }
}
