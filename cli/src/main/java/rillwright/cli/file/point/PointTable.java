package rillwright.cli.file.point;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.solver.network.Point;

/**
 * The points that a project names.
 *
 * @param names of all, those of no known kind too
 * @param byName those of a known kind; of faulty ones stand-ins
 */
public record PointTable(List<String> names, Map<String, Point> byName) {
  public PointTable {
    names = List.copyOf(names);
    byName = Collections.unmodifiableMap(new LinkedHashMap<>(byName));
  }

  /** Whether a point of that name is there, of whatever kind. */
  public boolean has(String name) {
    return byName.containsKey(name) || names.contains(name);
  }

  /** The point of a name; empty if there is none, or none of a known kind. */
  public Optional<Point> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** All points of a known kind, in the order of the file. */
  public List<Point> points() {
    return new ArrayList<>(byName.values());
  }
}
