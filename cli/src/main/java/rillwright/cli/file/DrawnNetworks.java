package rillwright.cli.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.field.DrawnValues;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.field.Uncertain;
import rillwright.cli.file.line.LinesReader;
import rillwright.cli.file.line.PlacedLine;
import rillwright.cli.file.part.PartReaders;
import rillwright.cli.file.part.PipeReader;
import rillwright.cli.file.point.PointTable;
import rillwright.cli.file.point.PointsReader;
import rillwright.cli.file.pump.PumpTable;
import rillwright.cli.file.pump.PumpsReader;
import rillwright.cli.file.pump.SheetSource;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.curves.sheet.DataSheet;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;

/**
 * The networks that a project may be: with drawn values in place of those that are not known
 * exactly. Where they stand in points, lines and pumps only, no more than those are read again;
 * where they change the water, everything is. Several threads may ask at a time.
 */
public final class DrawnNetworks {
  private static final String POINTS = "points";
  private static final String LINES = "lines";
  private static final String PUMPS = "pumps";

  private final Project project;
  private final IdentityHashMap<Scalar, Integer> indexOf = new IdentityHashMap<>();
  private final boolean readsAll;
  private final boolean readsPoints;
  private final Catalogue catalogue = Catalogue.standard();
  private final PumpTable pumps;
  private final Measure head;
  private final List<String> unknownPumps;
  private final Optional<MapNode> pumpsOnly;
  private final MapNode affectedPoints;
  private final List<AffectedLine> affected;
  private final MapNode linesOnly;
  private final PointTable middlePoints;

  /**
   * The networks of a project.
   *
   * @param project with the middle of every quantity
   * @param unknowns the quantities for which values will be given
   */
  public DrawnNetworks(Project project, List<Uncertain> unknowns) {
    this.project = project;
    MapNode tree = project.tree();
    unknowns.forEach(unknown -> indexOf.put(unknown.written(), indexOf.size()));
    this.readsAll =
        tree.entries().stream()
            .filter(entry -> !List.of(POINTS, LINES, PUMPS).contains(entry.key()))
            .anyMatch(entry -> holdsUnknown(entry.value()));
    MapNode allPoints = only(tree, POINTS, section(tree, POINTS).entries());
    this.readsPoints = holdsUnknown(allPoints);
    this.affectedPoints =
        only(
            tree,
            POINTS,
            section(tree, POINTS).entries().stream()
                .filter(point -> isBasin(point) || holdsUnknown(point.value()))
                .toList());
    List<Entry> unknownPumps =
        tree.findMap(PUMPS).map(MapNode::entries).orElse(List.of()).stream()
            .filter(pump -> holdsUnknown(pump.value()))
            .toList();
    this.unknownPumps = unknownPumps.stream().map(Entry::key).toList();
    this.pumpsOnly =
        unknownPumps.isEmpty() ? Optional.empty() : Optional.of(only(tree, PUMPS, unknownPumps));
    this.affected =
        section(tree, LINES).entries().stream()
            .filter(line -> AffectedLine.holds(line.value(), this::changes))
            .map(line -> AffectedLine.of(line, this::changes))
            .toList();
    this.linesOnly = only(tree, LINES, affected.stream().map(AffectedLine::entry).toList());
    this.pumps = new PumpTable(List.copyOf(project.sheets().keySet()), project.sheets());
    this.head = Measure.headIn(project.network().water().densityKgPerM3());
    this.middlePoints = points(allPoints, new Ledger(file()));
  }

  private static MapNode section(MapNode tree, String name) {
    return (MapNode) tree.find(name).orElseThrow().value();
  }

  /** The tree with one section and in it no more than some entries. */
  private static MapNode only(MapNode tree, String name, List<Entry> entries) {
    Entry section = tree.find(name).orElseThrow();
    MapNode map = new MapNode(entries, section.value().place());
    return new MapNode(List.of(new Entry(name, section.keyPlace(), map)), tree.place());
  }

  private boolean isDrawn(Node node) {
    return indexOf.containsKey(node);
  }

  /** Whether it is drawn, or names a pump that is not known. */
  private boolean changes(Node node) {
    return isDrawn(node) || (node instanceof Scalar text && unknownPumps.contains(text.text()));
  }

  private boolean holdsUnknown(Node node) {
    return AffectedLine.holds(node, this::isDrawn);
  }

  private String file() {
    return project.places().whole().source();
  }

  /**
   * The network with values.
   *
   * @param values of the unknowns, in their order, in the base units of their measures
   * @throws rillwright.cli.file.fault.InvalidInput if they contradict each other
   */
  public Network with(List<Double> values) {
    DrawnValues drawn =
        written -> {
          Integer index = indexOf.get(written);
          return index == null ? OptionalDouble.empty() : OptionalDouble.of(values.get(index));
        };
    if (readsAll) {
      return project.mapping().map(project.tree(), project.changes(), drawn).network();
    }
    Ledger ledger = new Ledger(file(), drawn);
    PointTable points = readsPoints ? points(ledger) : middlePoints;
    List<Line> lines = lines(points, ledger);
    ledger.faults().throwIfAny();
    Network middle = project.network();
    return new Network(middle.water(), middle.siteElevationM(), points.points(), lines);
  }

  /** A fall is read with the names of the basins. */
  private static boolean isBasin(Entry point) {
    return point.value().findText("kind").filter("basin"::equals).isPresent();
  }

  /** All points, those with unknowns in them read again. */
  private PointTable points(Ledger ledger) {
    Map<String, Point> all = new LinkedHashMap<>(middlePoints.byName());
    all.putAll(points(affectedPoints, ledger).byName());
    return new PointTable(middlePoints.names(), all);
  }

  private PointTable points(MapNode tree, Ledger ledger) {
    Fields root = Fields.of(tree, "", ledger, List.of(POINTS));
    return new PointsReader(catalogue, ledger).read(root);
  }

  /** All pumps, those with unknowns in them read again: they are written in the file itself. */
  private PumpTable pumps(Ledger ledger) {
    if (pumpsOnly.isEmpty()) {
      return pumps;
    }
    Fields root = Fields.of(pumpsOnly.get(), "", ledger, List.of(PUMPS));
    SheetSource none =
        (path, density) -> {
          throw new IllegalStateException("a sheet in a file is not drawn");
        };
    PumpTable drawn =
        new PumpsReader(none, project.network().water().densityKgPerM3(), ledger).read(root);
    Map<String, DataSheet> sheets = new LinkedHashMap<>(project.sheets());
    sheets.putAll(drawn.sheets());
    return new PumpTable(List.copyOf(project.sheets().keySet()), sheets);
  }

  /** All lines, those with unknowns in them read again. */
  private List<Line> lines(PointTable points, Ledger ledger) {
    Fields root = Fields.of(linesOnly, "", ledger, List.of(LINES));
    PartReaders parts = new PartReaders(catalogue, head, pumps(ledger));
    LinesReader reader = new LinesReader(points, parts, new PipeReader(catalogue), ledger);
    List<PlacedLine> read = reader.read(root);
    ledger.faults().throwIfAny();
    Map<LineName, Line> drawn = new HashMap<>();
    for (int i = 0; i < affected.size(); i++) {
      Line line = read.get(i).line();
      drawn.put(line.name(), affected.get(i).complete(line, project.network().line(line.name())));
    }
    List<Line> lines = new ArrayList<>();
    for (Line line : project.network().lines()) {
      lines.add(drawn.getOrDefault(line.name(), line));
    }
    return lines;
  }
}
