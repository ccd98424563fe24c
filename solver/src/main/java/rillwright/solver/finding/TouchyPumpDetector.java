package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** Pumps so near shut-off that 2 in of pond level change a fall by half. */
final class TouchyPumpDetector implements Detector {

  /** The change of level tried, m: 2 in; common practice, no source. */
  private static final double LEVEL_CHANGE_M = 0.0508;

  /** Only pumps in this share of their range can be so touchy; the rest are not tried. */
  private static final double WORTH_TRYING_SHARE = 0.35;

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    boolean starved = state.starves();
    if (starved || state.lines().stream().noneMatch(TouchyPumpDetector::isWorthTrying)) {
      return findings;
    }
    SteadyState lowered;
    try {
      lowered = SteadyStateFinder.find(withLowerBasins(state.network()));
    } catch (NoBalance drawsNoLongerMet) {
      return findings;
    }
    boolean starves = lowered.starves();
    for (Point point : state.network().points()) {
      if (point.spill().isPresent()) {
        double before = state.point(point.name()).outflowM3PerS();
        double after = lowered.point(point.name()).outflowM3PerS();
        if (before > 0 && after <= before / 2) {
          findings.add(touchy(point.name().value(), before, after, starves));
        }
      }
    }
    return findings;
  }

  private static boolean isWorthTrying(LineState line) {
    return line.parts().stream().anyMatch(TouchyPumpDetector::isNearShutOff);
  }

  private static boolean isNearShutOff(PartState part) {
    return part.part() instanceof Pump pump
        && part.flowM3PerS() > 0
        && part.flowM3PerS() < WORTH_TRYING_SHARE * pump.set().publishedRangeM3PerS();
  }

  private static Network withLowerBasins(Network network) {
    return network.with(
        network.points().stream().map(TouchyPumpDetector::lowered).toList(), network.lines());
  }

  private static Point lowered(Point point) {
    return point instanceof Basin basin ? basin.withLevel(basin.levelM() - LEVEL_CHANGE_M) : point;
  }

  /**
   * A fall that a little less water in the pond halves.
   *
   * @param starves whether that is because a chamber runs short then
   */
  private static Finding touchy(
      String at, double flowM3PerS, double loweredFlowM3PerS, boolean starves) {
    return Finding.of(Severity.ADVICE, "touchy", at, "Sensitive: with the pond ")
        .depth("lowered", LEVEL_CHANGE_M)
        .then(" lower, \"" + at + "\" gets ")
        .flow("loweredFlow", loweredFlowM3PerS)
        .then(" instead of ")
        .flow("flow", flowM3PerS)
        .then(
            starves
                ? ". What feeds the pump passes too little then: set the skimmer lower or take a"
                    + " wider one."
                : ". The pump runs too near its shut-off head; take one with more head.");
  }
}
