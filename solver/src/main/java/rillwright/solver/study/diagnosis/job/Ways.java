package rillwright.solver.study.diagnosis.job;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Tee;

/** The ways out through holes, gathered while a network is put together. */
final class Ways {
  private final List<Point> points = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();
  private final List<LineName> lost = new ArrayList<>();

  /** A tee at which a line is cut, with the way out from it. */
  PointName cut(Hole hole) {
    // a blank before a name sets it apart from every name in a file
    PointName name = new PointName(" cut " + (lines.size() + 1));
    points.add(new Tee(name, OptionalDouble.empty(), 0));
    out(name, hole);
    return name;
  }

  /** The way out from a point. */
  void out(PointName point, Hole hole) {
    Hole.Way way = hole.from(point, lines.size() + 1);
    points.add(way.end());
    lines.add(way.line());
    if (hole.lost()) {
      lost.add(way.line().name());
    }
  }

  List<Point> points() {
    return points;
  }

  List<Line> lines() {
    return lines;
  }

  List<LineName> lost() {
    return lost;
  }
}
