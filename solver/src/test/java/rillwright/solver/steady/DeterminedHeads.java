package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.PointName;

/**
 * Which heads a state's flows determine, worked out by walking over what is neither shut nor at its
 * greatest flow from where heads are held; and whether the flows where none are determined agree
 * round every loop.
 */
final class DeterminedHeads {
  private record Step(String from, String to, double dropM) {}

  private final SteadyState state;
  private final Map<LineState, HeadLaw> laws;
  private final double headTolerance;
  private final List<Step> steps = new ArrayList<>();
  private final Map<String, Double> heads = new HashMap<>();
  private final List<String> faults = new ArrayList<>();

  private DeterminedHeads(SteadyState state, Map<LineState, HeadLaw> laws, double headTolerance) {
    this.state = state;
    this.laws = laws;
    this.headTolerance = headTolerance;
  }

  /** What is wrong with a state; empty if nothing is. */
  static List<String> faults(
      SteadyState state, Map<LineState, HeadLaw> laws, double headTolerance) {
    return new DeterminedHeads(state, laws, headTolerance).run();
  }

  private List<String> run() {
    for (LineState line : state.lines()) {
      HeadLaw law = laws.get(line);
      double flow = line.flowM3PerS();
      boolean atRestBesideStarved = flow == 0 && touchesStarved(line);
      if (flow > law.leastFlow() && flow < law.greatestFlow() && !atRestBesideStarved) {
        double drop = law.headLossAt(flow);
        steps.add(
            new Step(
                sideOf(line, line.line().from().value(), -1),
                sideOf(line, line.line().to().value(), 1),
                drop));
      }
    }
    for (PointState point : state.points()) {
      String name = point.point().name().value();
      if (point.point().heldHeadM().isPresent()) {
        heads.put(name, point.point().heldHeadM().getAsDouble());
      }
      if (point.isStarved()) {
        heads.put(name, point.headM().getAsDouble());
      }
      point
          .point()
          .spill()
          .filter(spill -> point.outflowM3PerS() > spill.law().leastFlow())
          .ifPresent(
              spill ->
                  heads.put(name, spill.levelM() + spill.law().headLossAt(point.outflowM3PerS())));
    }
    spread();
    for (PointState point : state.points()) {
      String name = point.point().name().value();
      if (point.isDetermined() != heads.containsKey(name)) {
        faults.add(name + ": says determined " + point.isDetermined());
      }
    }
    for (Step step : steps) {
      if (!heads.containsKey(step.from)) {
        heads.put(step.from, 0.0);
        spread();
      }
    }
    for (Step step : steps) {
      double error = heads.get(step.from) - heads.get(step.to) - step.dropM;
      double tolerance = steps.size() * headTolerance;
      if (Math.abs(error) > tolerance) {
        faults.add(step.from + " to " + step.to + ": a loop does not close by " + error);
      }
    }
    return faults;
  }

  /** A starved chamber has two sides: where water runs in and where it is drawn. */
  private String sideOf(LineState line, String point, int directionIn) {
    PointState at = state.point(new PointName(point));
    boolean draws = at.isStarved() && line.flowM3PerS() * directionIn < 0;
    return draws ? "drawn from " + point : point;
  }

  private boolean touchesStarved(LineState line) {
    return state.point(line.line().from()).isStarved() || state.point(line.line().to()).isStarved();
  }

  private void spread() {
    boolean more = true;
    while (more) {
      more = false;
      for (Step step : steps) {
        if (heads.containsKey(step.from) && !heads.containsKey(step.to)) {
          heads.put(step.to, heads.get(step.from) - step.dropM);
          more = true;
        } else if (heads.containsKey(step.to) && !heads.containsKey(step.from)) {
          heads.put(step.from, heads.get(step.to) + step.dropM);
          more = true;
        }
      }
    }
  }
}
