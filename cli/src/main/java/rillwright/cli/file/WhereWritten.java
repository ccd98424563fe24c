package rillwright.cli.file;

import java.util.List;
import java.util.Map;
import rillwright.cli.file.fault.Place;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;

/** Where the things of a project are written, so that what is said about them can point there. */
public final class WhereWritten {
  private final Place whole;
  private final Map<PointName, Place> points;
  private final Map<LineName, LinePlaces> lines;

  /**
   * Places of one line.
   *
   * @param name of its name
   * @param parts of its parts, in order
   */
  record LinePlaces(Place name, List<Place> parts) {}

  WhereWritten(Place whole, Map<PointName, Place> points, Map<LineName, LinePlaces> lines) {
    this.whole = whole;
    this.points = Map.copyOf(points);
    this.lines = Map.copyOf(lines);
  }

  /** The file as a whole. */
  public Place whole() {
    return whole;
  }

  /** Where a point is written; the file as a whole if it is not known. */
  public Place ofPoint(PointName name) {
    return points.getOrDefault(name, whole);
  }

  /** Where a line is written; the file as a whole if it is not known. */
  public Place ofLine(LineName name) {
    LinePlaces places = lines.get(name);
    return places == null ? whole : places.name();
  }

  /**
   * Where a part of a line is written; the line's place if it is not known.
   *
   * @param index its place among the line's parts, from 0
   */
  public Place ofPart(LineName line, int index) {
    LinePlaces places = lines.get(line);
    return places == null || index < 0 || index >= places.parts().size()
        ? ofLine(line)
        : places.parts().get(index);
  }
}
