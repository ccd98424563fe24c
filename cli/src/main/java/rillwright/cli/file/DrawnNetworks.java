package rillwright.cli.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.field.DrawnValues;
import rillwright.cli.file.field.Uncertain;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;

/**
 * The networks that a project may be: with drawn values in place of those that are not known
 * exactly. Where a value stands in a point or line as it is, it is put in its place; other points,
 * lines and pumps that hold one are read again; where the water changes, everything is. Several
 * threads may ask at a time.
 */
public final class DrawnNetworks {
  /** The ends of what may be drawn, as chances: beyond them lies one sample in 10⁹. */
  private static final double EDGE = 1e-9;

  private final Project project;
  private final IdentityHashMap<Scalar, Integer> indexOf = new IdentityHashMap<>();
  private final boolean readsAll;
  private final Map<String, Template> points = new LinkedHashMap<>();
  private final Map<String, Template> lines = new LinkedHashMap<>();
  private final Optional<Rereading> rest;

  /**
   * The networks of a project.
   *
   * @param project with the middle of every quantity
   * @param unknowns the quantities for which values will be given
   */
  public DrawnNetworks(Project project, List<Uncertain> unknowns) {
    this.project = project;
    unknowns.forEach(unknown -> indexOf.put(unknown.written(), indexOf.size()));
    this.readsAll =
        project.tree().entries().stream()
            .filter(entry -> !Rereading.SECTIONS.contains(entry.key()))
            .anyMatch(entry -> Rereading.holds(entry.value(), this::isDrawn));
    Rereading all = Rereading.of(project, this::isDrawn);
    if (!readsAll) {
      prepare(all, unknowns);
    }
    Rereading left = all.only(name -> !points.containsKey(name), name -> !lines.containsKey(name));
    this.rest = left.isEmpty() ? Optional.empty() : Optional.of(left);
  }

  private boolean isDrawn(Node node) {
    return indexOf.containsKey(node);
  }

  /** Finds the templates, by reading with values of which each meets each other at all ends. */
  private void prepare(Rereading all, List<Uncertain> unknowns) {
    List<List<Double>> sets = new ArrayList<>();
    sets.add(set(unknowns, index -> 0.5));
    for (int bit = 0; bit <= Integer.SIZE - Integer.numberOfLeadingZeros(unknowns.size()); bit++) {
      int shift = bit;
      sets.add(set(unknowns, index -> (index >> shift & 1) == 0 ? EDGE : 1 - EDGE));
      sets.add(set(unknowns, index -> (index >> shift & 1) == 0 ? 1 - EDGE : EDGE));
    }
    List<Rereading.Read> readings = new ArrayList<>();
    try {
      sets.forEach(set -> readings.add(all.with(drawn(set), around(project.network().points()))));
    } catch (InvalidInput contradiction) {
      return;
    }
    put(points, sets, readings, Rereading.Read::points, point -> point.name().value());
    put(lines, sets, readings, Rereading.Read::lines, line -> line.name().value());
  }

  private static List<Double> set(List<Uncertain> unknowns, Function<Integer, Double> chance) {
    return IntStream.range(0, unknowns.size())
        .mapToObj(index -> unknowns.get(index).distribution().quantile(chance.apply(index)))
        .toList();
  }

  private static <T> void put(
      Map<String, Template> templates,
      List<List<Double>> sets,
      List<Rereading.Read> readings,
      Function<Rereading.Read, List<T>> kind,
      Function<T, String> name) {
    List<T> first = kind.apply(readings.get(0));
    for (int i = 0; i < first.size(); i++) {
      int place = i;
      Template.of(readings.stream().map(reading -> kind.apply(reading).get(place)).toList(), sets)
          .ifPresent(template -> templates.put(name.apply(first.get(place)), template));
    }
  }

  private static Map<String, Point> around(Collection<Point> points) {
    Map<String, Point> byName = new LinkedHashMap<>();
    points.forEach(point -> byName.put(point.name().value(), point));
    return byName;
  }

  private DrawnValues drawn(List<Double> values) {
    return written -> {
      Integer index = indexOf.get(written);
      return index == null ? OptionalDouble.empty() : OptionalDouble.of(values.get(index));
    };
  }

  /**
   * The network with values.
   *
   * @param values of the unknowns, in their order, in the base units of their measures
   * @throws rillwright.cli.file.fault.InvalidInput if they contradict each other
   */
  public Network with(List<Double> values) {
    if (readsAll) {
      return project.mapping().map(project.tree(), project.changes(), drawn(values)).network();
    }
    Network middle = project.network();
    Map<String, Point> drawnPoints = new LinkedHashMap<>();
    for (Point point : middle.points()) {
      Template template = points.get(point.name().value());
      drawnPoints.put(
          point.name().value(), template == null ? point : (Point) template.with(values));
    }
    Map<String, Line> drawnLines = new LinkedHashMap<>();
    for (Line line : middle.lines()) {
      Template template = lines.get(line.name().value());
      drawnLines.put(line.name().value(), template == null ? line : (Line) template.with(values));
    }
    rest.map(reading -> reading.with(drawn(values), drawnPoints))
        .ifPresent(
            read -> {
              read.points().forEach(point -> drawnPoints.put(point.name().value(), point));
              read.lines().forEach(line -> drawnLines.put(line.name().value(), line));
            });
    return middle.with(List.copyOf(drawnPoints.values()), List.copyOf(drawnLines.values()));
  }
}
