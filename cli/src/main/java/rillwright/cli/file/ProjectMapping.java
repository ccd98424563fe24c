package rillwright.cli.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.change.Changes;
import rillwright.cli.file.fault.FaultList;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.field.DrawnValues;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.job.JobPapers;
import rillwright.cli.file.job.JobReader;
import rillwright.cli.file.job.PhotoFolder;
import rillwright.cli.file.line.LinesReader;
import rillwright.cli.file.line.PlacedLine;
import rillwright.cli.file.outline.LooseOutline;
import rillwright.cli.file.outline.ReadingOutline;
import rillwright.cli.file.part.PartReaders;
import rillwright.cli.file.part.PipeReader;
import rillwright.cli.file.point.PointTable;
import rillwright.cli.file.point.PointsReader;
import rillwright.cli.file.pump.PumpTable;
import rillwright.cli.file.pump.PumpsReader;
import rillwright.cli.file.pump.SheetSource;
import rillwright.cli.file.site.PriceNames;
import rillwright.cli.file.site.SiteReader;
import rillwright.cli.file.stream.BoxesReader;
import rillwright.cli.file.stream.EvaporationReader;
import rillwright.cli.file.stream.StreamsReader;
import rillwright.cli.file.tree.MapNode;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.stream.FallBox;
import rillwright.solver.stream.Stream;
import rillwright.solver.stream.StreamPlan;
import rillwright.solver.stream.WaterLoss;
import rillwright.solver.water.Water;

/** Makes a project of a file's tree; of another one like it only what is changed is read. */
public final class ProjectMapping {
  private static final List<String> SECTIONS =
      List.of(
          "rillwright",
          "title",
          "job",
          "show",
          "water",
          "site",
          "running",
          "points",
          "lines",
          "pumps",
          "prices",
          "streams",
          "readings",
          "signs",
          "evaporation",
          "conditions");
  private static final String VERSION = "1";

  private final Catalogue catalogue;
  private final SheetSource sheets;
  private final PhotoFolder photos;
  private final String file;
  private final ReadPieces before;

  /**
   * A mapping.
   *
   * @param catalogue what materials, fittings and lips are known
   * @param sheets where data sheets in files of their own are found
   * @param photos where photographs are found
   * @param file the file as the user named it
   */
  public ProjectMapping(Catalogue catalogue, SheetSource sheets, PhotoFolder photos, String file) {
    this(catalogue, sheets, photos, file, new ReadPieces());
  }

  private ProjectMapping(
      Catalogue catalogue, SheetSource sheets, PhotoFolder photos, String file, ReadPieces before) {
    this.catalogue = catalogue;
    this.sheets = sheets;
    this.photos = photos;
    this.file = file;
    this.before = before;
  }

  /**
   * The project that a tree is with some values changed.
   *
   * @param more changes still to be made to the tree
   * @param all changes that are reported
   * @throws InvalidInput with all that is wrong with the changes and with what they leave
   */
  Project mapWith(MapNode tree, List<String> more, List<String> all) {
    FaultList faults = new FaultList(file);
    MapNode changed = tree;
    for (String change : more) {
      try {
        changed = Changes.apply(changed, change);
      } catch (InvalidInput wrong) {
        wrong.faults().forEach(faults::add);
      }
    }
    if (faults.size() > 0) {
      try {
        map(changed, all);
      } catch (InvalidInput wrong) {
        wrong.faults().forEach(faults::add);
      }
      faults.throwIfAny();
    }
    return map(changed, all);
  }

  /**
   * The project that a tree is.
   *
   * @param changes that made it, as they are reported
   * @throws InvalidInput with all that is wrong with it
   */
  public Project map(MapNode tree, List<String> changes) {
    return map(tree, changes, DrawnValues.NONE);
  }

  /**
   * The project that a tree is with other values in place of some that it says.
   *
   * @throws InvalidInput with all that is wrong with it
   */
  Project map(MapNode tree, List<String> changes, DrawnValues drawn) {
    ReadPieces read = before.again();
    Ledger ledger = new Ledger(file, drawn);
    Fields root = Fields.of(tree, "", ledger, SECTIONS);
    version(root);
    refuseReadingsAlone(root);
    final String title = root.findText("title").orElse(nameOf(file));
    final Show show =
        root.findWord("show", List.of("us", "metric")).filter("metric"::equals).isPresent()
            ? Show.METRIC
            : Show.US;
    if (show == Show.METRIC) {
      ledger.showMetric();
    }
    SiteReader site = new SiteReader(root);
    Water water = site.water();
    PumpTable pumps = new PumpsReader(sheets, water.densityKgPerM3(), ledger).read(root);
    PointTable points = new PointsReader(catalogue, ledger).read(root, read.points());
    List<PlacedLine> lines =
        new LinesReader(
                points,
                new PartReaders(catalogue, water.densityKgPerM3(), pumps),
                new PipeReader(catalogue),
                ledger)
            .read(root, read.lines());
    new NetworkCheck(ledger).gaugesOfOneName(lines);
    outlines(root, points, lines);
    List<Stream> streams = new StreamsReader(points, catalogue, ledger).read(root);
    Optional<WaterLoss> loss = EvaporationReader.read(root, water);
    Map<PointName, FallBox> boxes = BoxesReader.read(root, ledger);
    WhereWritten places = places(tree, file, lines);
    requireContents(root, points, lines, ledger, places);
    final double elevation = site.elevationM();
    final var running = site.running();
    final JobPapers papers = new JobReader(photos, ledger).read(root);
    final var prices = site.prices(new PriceNames(catalogue, fittingTypes(lines)));
    ledger.faults().throwIfAny();
    Network network =
        new Network(
            water, elevation, points.points(), lines.stream().map(PlacedLine::line).toList());
    new NetworkCheck(ledger).headlessLines(network, places);
    ledger.faults().throwIfAny();
    return new Project(
        title,
        show,
        network,
        new StreamPlan(network, streams, boxes, loss),
        running,
        prices,
        pumps.sheets(),
        papers,
        ledger.notes(),
        ledger.uncertain(),
        places,
        tree,
        changes,
        new ProjectMapping(catalogue, sheets, photos, file, read));
  }

  private static void version(Fields root) {
    Optional<String> written = root.findText("rillwright").filter(text -> !text.equals(VERSION));
    written.ifPresent(
        text ->
            root.fault(
                "rillwright",
                PlainText.quoted(text)
                    + " is not possible; it must be 1, the version of the format that this program"
                    + " reads"));
  }

  /** Readings of a visit are no project; all else that is wrong follows from that. */
  private static void refuseReadingsAlone(Fields root) {
    if (root.has("readings") && !root.has("points") && !root.has("lines")) {
      root.fault(
          "readings",
          "this file holds readings, and neither points nor lines; name the project's file and give"
              + " this one by --readings: \"rillwright weak PROJECT --readings THIS-FILE\"");
      root.ledger().faults().throwIfAny();
    }
  }

  /** The file's name without its folder and ending. */
  private static String nameOf(String file) {
    String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  private static void outlines(Fields root, PointTable points, List<PlacedLine> lines) {
    List<String> gauges =
        lines.stream()
            .flatMap(placed -> placed.line().parts().stream())
            .filter(Gauge.class::isInstance)
            .map(part -> ((Gauge) part).name())
            .toList();
    List<String> names = root.findMap("lines").map(MapNode::keys).orElse(List.of());
    new ReadingOutline(points, names, gauges).check(root);
    LooseOutline.check(root);
  }

  private static List<String> fittingTypes(List<PlacedLine> lines) {
    return lines.stream()
        .flatMap(placed -> placed.line().parts().stream())
        .filter(Fitting.class::isInstance)
        .map(part -> ((Fitting) part).label())
        .distinct()
        .toList();
  }

  private static void requireContents(
      Fields root, PointTable points, List<PlacedLine> lines, Ledger ledger, WhereWritten places) {
    for (String section : List.of("points", "lines")) {
      boolean empty = root.findMap(section).map(map -> map.entries().isEmpty()).orElse(false);
      if (!root.has(section) || empty) {
        root.fault(
            section, "this section is missing or empty; a project has points, and lines between");
      }
    }
    int named = root.findMap("lines").map(map -> map.entries().size()).orElse(0);
    if (named > 0 && named == lines.size()) {
      List<Point> known = points.points();
      new NetworkCheck(ledger).untouchedPoints(known, lines, places::ofPoint);
    }
  }

  private static WhereWritten places(MapNode tree, String file, List<PlacedLine> lines) {
    Map<PointName, Place> points = new LinkedHashMap<>();
    tree.findMap("points")
        .ifPresent(
            map ->
                map.entries()
                    .forEach(entry -> points.put(new PointName(entry.key()), entry.keyPlace())));
    Map<LineName, WhereWritten.LinePlaces> byLine = new LinkedHashMap<>();
    for (PlacedLine placed : lines) {
      byLine.put(
          placed.line().name(), new WhereWritten.LinePlaces(placed.place(), placed.partPlaces()));
    }
    return new WhereWritten(Place.whole(file), points, byLine);
  }
}
