package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.law.Gravity;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.Course;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.water.Atmosphere;

/**
 * Places where a pipe climbs high: whether water comes over them, whether air stays there, and what
 * the water there is under.
 */
final class HighPointDetector implements Detector {
  /**
   * From this share of the margin between air and vapour pressure on, suction draws air out of the
   * water; common practice, no source.
   */
  private static final double DEGASSING = 0.7;

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (LineState line : state.lines()) {
      course(line, findings);
      for (PartState part : line.parts()) {
        if (part.part() instanceof HighPoint point) {
          suction(state.network(), line, part, point, findings);
        }
      }
    }
    return findings;
  }

  private static void course(LineState state, List<Finding> findings) {
    Line line = state.line();
    String name = line.name().value();
    if (state.course() instanceof Course.NotStarted barred && barred.reachM().isPresent()) {
      HighPoint point = (HighPoint) line.parts().get(barred.highPoint());
      findings.add(
          HighPointFindings.cannotStart(
              name,
              point,
              point.elevationM() - barred.reachM().getAsDouble(),
              shutOffHeadM(line, barred.highPoint())));
    } else if (state.course() instanceof Course.Vented vented) {
      HighPoint point = (HighPoint) line.parts().get(vented.highPoint());
      findings.add(
          HighPointFindings.vented(
              name, point, Math.abs(state.flowM3PerS()), vented.fullFlowM3PerS()));
    } else if (state.course() instanceof Course.Swept swept) {
      HighPoint point = (HighPoint) line.parts().get(swept.highPoint());
      findings.add(HighPointFindings.swept(name, point, swept.ventedFlowM3PerS()));
    }
    line.climbs().values().stream()
        .filter(point -> point.air() == HighPoint.Air.PRIMED)
        .findFirst()
        .ifPresent(point -> findings.add(HighPointFindings.primed(name, point)));
  }

  /**
   * The published shut-off heads of a line's pumps upstream of a place; empty without a pump there.
   */
  private static OptionalDouble shutOffHeadM(Line line, int place) {
    List<Pump> pumps =
        line.parts().subList(0, place).stream()
            .filter(Pump.class::isInstance)
            .map(Pump.class::cast)
            .toList();
    return pumps.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            pumps.stream().mapToDouble(pump -> pump.set().publishedShutOffHeadM()).sum());
  }

  private static void suction(
      Network network, LineState line, PartState part, HighPoint point, List<Finding> findings) {
    if (part.headBeforeM().isEmpty() || line.flowM3PerS() == 0) {
      return;
    }
    double weight = network.water().densityKgPerM3() * Gravity.STANDARD_M_PER_S2;
    double suction =
        -weight * point.pressureHeadM(part.headBeforeM().getAsDouble(), part.flowM3PerS());
    double margin =
        Atmosphere.pressurePa(network.siteElevationM()) - network.water().vapourPressurePa();
    if (suction > DEGASSING * margin) {
      findings.add(
          HighPointFindings.strongSuction(
              line.line().name().value(), point, suction, suction >= margin));
    }
  }
}
