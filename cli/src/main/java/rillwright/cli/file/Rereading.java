package rillwright.cli.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.field.DrawnValues;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.field.Pieces;
import rillwright.cli.file.line.LinesReader;
import rillwright.cli.file.line.PlacedLine;
import rillwright.cli.file.part.PartReaders;
import rillwright.cli.file.part.PipeReader;
import rillwright.cli.file.point.PointTable;
import rillwright.cli.file.point.PointsReader;
import rillwright.cli.file.pump.PumpTable;
import rillwright.cli.file.pump.PumpsReader;
import rillwright.cli.file.pump.SheetSource;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.curves.sheet.DataSheet;
import rillwright.solver.network.Line;
import rillwright.solver.network.Point;

/**
 * Reads points and lines of a project again, with drawn values in place of what is written. Several
 * threads may ask at a time.
 *
 * @param points and lines to read
 * @param pumps those that hold drawn values
 */
record Rereading(Project project, List<Entry> points, List<Entry> lines, List<Entry> pumps) {
  private static final String POINTS = "points";
  private static final String LINES = "lines";
  private static final String PUMPS = "pumps";

  /** The sections that it reads. */
  static final List<String> SECTIONS = List.of(POINTS, LINES, PUMPS);

  /** What is read. */
  record Read(List<Point> points, List<Line> lines) {}

  /** Reads what holds drawn values. */
  static Rereading of(Project project, Predicate<Node> isDrawn) {
    MapNode tree = project.tree();
    List<Entry> pumps = entries(tree, PUMPS, isDrawn);
    List<String> drawnPumps = pumps.stream().map(Entry::key).toList();
    Predicate<Node> changes =
        node ->
            isDrawn.test(node) || (node instanceof Scalar text && drawnPumps.contains(text.text()));
    return new Rereading(project, section(tree, POINTS), entries(tree, LINES, changes), pumps)
        .onlyPoints(entry -> holds(entry.value(), isDrawn));
  }

  /** With the basins, if any are left: a fall is read with their names. */
  private Rereading onlyPoints(Predicate<Entry> point) {
    boolean none = points.stream().noneMatch(point);
    Predicate<Entry> kept = point.or(Rereading::isBasin);
    return new Rereading(
        project, none ? List.of() : points.stream().filter(kept).toList(), lines, pumps);
  }

  private static boolean isBasin(Entry point) {
    return point.value().findText("kind").filter("basin"::equals).isPresent();
  }

  private static List<Entry> section(MapNode tree, String name) {
    return tree.findMap(name).map(MapNode::entries).orElse(List.of());
  }

  private static List<Entry> entries(MapNode tree, String section, Predicate<Node> isDrawn) {
    return section(tree, section).stream().filter(entry -> holds(entry.value(), isDrawn)).toList();
  }

  /** Whether a piece of a file holds a drawn value. */
  static boolean holds(Node node, Predicate<Node> isDrawn) {
    if (node instanceof MapNode map) {
      return map.entries().stream().anyMatch(entry -> holds(entry.value(), isDrawn));
    }
    if (node instanceof ListNode list) {
      return list.items().stream().anyMatch(item -> holds(item, isDrawn));
    }
    return isDrawn.test(node);
  }

  /** Reads no more than the points and lines of some names. */
  Rereading only(Predicate<String> point, Predicate<String> line) {
    return new Rereading(
            project, points, lines.stream().filter(entry -> line.test(entry.key())).toList(), pumps)
        .onlyPoints(entry -> point.test(entry.key()));
  }

  boolean isEmpty() {
    return points.isEmpty() && lines.isEmpty();
  }

  /** The tree with one section and in it no more than some entries. */
  private MapNode tree(String name, List<Entry> entries) {
    Entry section = project.tree().find(name).orElseThrow();
    MapNode map = new MapNode(entries, section.value().place());
    return new MapNode(List.of(new Entry(name, section.keyPlace(), map)), project.tree().place());
  }

  private static Fields root(MapNode tree, Ledger ledger) {
    return Fields.of(tree, "", ledger, SECTIONS);
  }

  /**
   * Reads them.
   *
   * @param around the points among which they stand, by name
   * @throws rillwright.cli.file.fault.InvalidInput if the values contradict each other
   */
  Read with(DrawnValues drawn, Map<String, Point> around) {
    Ledger ledger = new Ledger(project.places().whole().source(), drawn);
    Catalogue catalogue = Catalogue.standard();
    Map<String, Point> all = new LinkedHashMap<>(around);
    PointsReader reader = new PointsReader(catalogue, ledger);
    Map<String, Point> read =
        reader.read(root(tree(POINTS, points), ledger), new Pieces<>()).byName();
    all.putAll(read);
    PointTable table = new PointTable(List.copyOf(all.keySet()), all);
    PartReaders parts = new PartReaders(catalogue, densityKgPerM3(), pumps(ledger));
    List<PlacedLine> placed =
        new LinesReader(table, parts, new PipeReader(catalogue), ledger)
            .read(root(tree(LINES, lines), ledger), new Pieces<>());
    ledger.faults().throwIfAny();
    return new Read(List.copyOf(read.values()), placed.stream().map(PlacedLine::line).toList());
  }

  private double densityKgPerM3() {
    return project.network().water().densityKgPerM3();
  }

  /** All pumps, those with drawn values in them read again: they are written in the file itself. */
  private PumpTable pumps(Ledger ledger) {
    Map<String, DataSheet> sheets = new LinkedHashMap<>(project.sheets());
    if (!pumps.isEmpty()) {
      SheetSource none =
          (path, density) -> {
            throw new IllegalStateException("a sheet in a file is not drawn");
          };
      sheets.putAll(
          new PumpsReader(none, densityKgPerM3(), ledger)
              .read(root(tree(PUMPS, pumps), ledger))
              .sheets());
    }
    return new PumpTable(List.copyOf(project.sheets().keySet()), sheets);
  }
}
