package rillwright.cli.study.section;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.study.section.Elevations.Elevation;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;

/** The stations of one line, in the order in which its water meets them. */
final class LineStations {
  private final Passage passage;
  private final Line line;
  private final Hydraulics hydraulics;
  private final Elevations.Along along;
  private final double fromM;
  private final List<Station> stations = new ArrayList<>();
  private final double lengthM;

  /**
   * Those of a line.
   *
   * @param fromM distance at which the line begins, m
   */
  LineStations(Passage passage, Hydraulics hydraulics, Elevations elevations, double fromM) {
    this.passage = passage;
    this.line = passage.line();
    this.hydraulics = hydraulics;
    this.along = elevations.along(line);
    this.fromM = fromM;
    this.lengthM = line.parts().stream().mapToDouble(Elevations::lengthM).sum();
    elevations.take(line.from(), along.start().elevationM());
    elevations.take(line.to(), along.end().elevationM());
    lay();
  }

  private void lay() {
    double distanceM = 0;
    for (int i = 0; i < line.parts().size(); i++) {
      Part part = line.parts().get(i);
      Optional<Bore> bore = bore(part);
      boolean standsInWater = i == 0 && part instanceof Pump;
      Optional<Bore> inlet = standsInWater ? Optional.empty() : bore;
      Measures before =
          measures(along.before(i), i, hydraulics.headBeforeM(line, i), inlet, distanceM);
      distanceM += Elevations.lengthM(part);
      Measures after =
          measures(along.after(i), i + 1, hydraulics.headAfterM(line, i), bore, distanceM);
      boolean forward = passage.forward();
      stations.add(
          new Station(
              new Station.InLine(line.name(), i, part),
              forward ? before : after,
              forward ? after : before));
    }
    if (!passage.forward()) {
      Collections.reverse(stations);
    }
  }

  /** The bore whose velocity head a gauge at a part does not show. */
  private Optional<Bore> bore(Part part) {
    if (part instanceof Gauge gauge) {
      return gauge.bore();
    }
    return part instanceof HighPoint high ? high.pipeBore() : part.bore().or(line::mainBore);
  }

  /**
   * Between two parts.
   *
   * @param next index of the part behind it, in the direction of the line
   * @param lineDistanceM from the line's first point
   */
  private Measures measures(
      Elevation at, int next, OptionalDouble headM, Optional<Bore> bore, double lineDistanceM) {
    boolean isLast = next == line.parts().size();
    return new Measures(
        fromM + (passage.forward() ? lineDistanceM : lengthM - lineDistanceM),
        at.elevationM(),
        at.source(),
        headM,
        hydraulics.gaugeHeadM(headM, line, bore),
        hydraulics.restHeadM(line, isLast ? next - 1 : next),
        hydraulics.shutOffHeadM(line, next));
  }

  /** In the order of the water. */
  List<Station> stations() {
    return stations;
  }

  /** At the point where the water enters it. */
  Measures start() {
    return end(passage.forward(), passage.start(), true, fromM);
  }

  /** At the point where the water leaves it. */
  Measures end() {
    return end(!passage.forward(), passage.end(), false, fromM + lengthM);
  }

  private Measures end(boolean first, PointName point, boolean drawn, double distanceM) {
    Elevation at = first ? along.start() : along.end();
    OptionalDouble head = hydraulics.headM(point, drawn && passage.flowM3PerS() > 0);
    return new Measures(
        distanceM,
        at.elevationM(),
        at.source(),
        head,
        head,
        hydraulics.restHeadM(point),
        hydraulics.shutOffHeadM(line, first ? 0 : line.parts().size()));
  }
}
