package rillwright.cli.study.section;

import rillwright.solver.network.Line;
import rillwright.solver.network.PointName;

/**
 * A line as its water passes it.
 *
 * @param line which
 * @param forward whether the water comes from its first point
 * @param flowM3PerS without sign
 */
record Passage(Line line, boolean forward, double flowM3PerS) {

  PointName start() {
    return forward ? line.from() : line.to();
  }

  PointName end() {
    return forward ? line.to() : line.from();
  }
}
