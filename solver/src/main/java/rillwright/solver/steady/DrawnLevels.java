package rillwright.solver.steady;

import java.util.Map;
import java.util.OptionalDouble;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Line;
import rillwright.solver.network.PointName;

/** The levels from which starved chambers are drawn. */
final class DrawnLevels {
  private final RunningNetwork running;
  private final Solved solved;
  private final Map<PointName, Starved> starved;

  DrawnLevels(RunningNetwork running, Solved solved, Map<PointName, Starved> starved) {
    this.running = running;
    this.solved = solved;
    this.starved = starved;
  }

  /**
   * The level that a starved chamber is drawn from, m: where its lines take what comes in, or, if
   * nothing runs, the greatest level up to the intake at which nothing does.
   */
  double levelM(PointName chamber) {
    return solved.headM(chamber).orElseGet(() -> levelAtWhichDrawingStops(chamber));
  }

  private double levelAtWhichDrawingStops(PointName chamber) {
    double level = starved.get(chamber).intakeM();
    for (Line line : running.network().lines()) {
      if (solved.linksOf().containsKey(line.name())) {
        HeadLaw law = running.lawOf(line);
        if (line.from().equals(chamber) && law.greatestFlow() > 0) {
          level = Math.min(level, headBeyondM(line.to()).orElse(level) + law.headLossAt(0));
        } else if (line.to().equals(chamber) && law.leastFlow() < 0) {
          level = Math.min(level, headBeyondM(line.from()).orElse(level) - law.headLossAt(0));
        }
      }
    }
    return level;
  }

  /** The head that water running to a point meets, m; empty where nothing determines it. */
  private OptionalDouble headBeyondM(PointName point) {
    Starved chamber = starved.get(point);
    return chamber == null ? solved.headM(point) : OptionalDouble.of(chamber.intakeM());
  }
}
