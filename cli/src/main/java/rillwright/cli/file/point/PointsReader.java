package rillwright.cli.file.point;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.field.Pieces;
import rillwright.cli.file.job.JobReader;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** Reads the section {@code points}. */
public final class PointsReader {
  private static final String KIND = "kind";

  private final Catalogue catalogue;
  private final Ledger ledger;

  /** A reader. */
  public PointsReader(Catalogue catalogue, Ledger ledger) {
    this.catalogue = catalogue;
    this.ledger = ledger;
  }

  /**
   * The points of a project.
   *
   * @param pieces that are known
   */
  public PointTable read(Fields root, Pieces<Optional<Point>> pieces) {
    List<Entry> entries = root.findMap("points").map(MapNode::entries).orElse(List.of());
    List<String> basins = basins(entries);
    Map<String, PointReader> readers = readers(basins);
    List<String> names = new ArrayList<>();
    Map<String, Point> points = new LinkedHashMap<>();
    for (Entry entry : entries) {
      names.add(entry.key());
      pieces
          .read(entry, basins, ledger, () -> point(entry, readers))
          .ifPresent(point -> points.put(entry.key(), point));
    }
    return new PointTable(names, points);
  }

  private static List<String> basins(List<Entry> entries) {
    return entries.stream()
        .filter(entry -> kindOf(entry).filter("basin"::equals).isPresent())
        .map(Entry::key)
        .toList();
  }

  private Map<String, PointReader> readers(List<String> basins) {
    Map<String, PointReader> readers = new LinkedHashMap<>();
    for (PointReader reader :
        List.of(
            new BasinReader(),
            new ChamberReader(),
            new TeeReader(),
            new FallReader(catalogue, basins),
            new OutletReader())) {
      readers.put(reader.kind(), reader);
    }
    return readers;
  }

  private static Optional<String> kindOf(Entry entry) {
    return entry.value() instanceof MapNode map
        ? map.find(KIND)
            .map(Entry::value)
            .filter(Scalar.class::isInstance)
            .map(Scalar.class::cast)
            .filter(scalar -> !scalar.isNothing())
            .map(Scalar::text)
        : Optional.empty();
  }

  private Optional<Point> point(Entry entry, Map<String, PointReader> readers) {
    String what = "point " + PlainText.quoted(entry.key());
    if (entry.key().isBlank()) {
      ledger.fault(entry.keyPlace(), what + ": a point needs a name");
    }
    if (!(entry.value() instanceof MapNode map)) {
      ledger.fault(
          entry.value().place(),
          what + ": expected fields such as {kind: tee}, found " + entry.value().words());
      return Optional.empty();
    }
    Optional<String> kind = kindOf(entry);
    Optional<PointReader> reader = kind.map(readers::get);
    if (reader.isEmpty()) {
      ledger.fault(
          map.find(KIND).map(found -> found.value().place()).orElse(entry.keyPlace()),
          what
              + kind.map(word -> ": kind: " + PlainText.quoted(word) + " is not known")
                  .orElse(": its kind is missing")
              + Choices.hint(kind.orElse(""), readers.keySet()));
      return Optional.empty();
    }
    List<String> fields = new ArrayList<>(List.of(KIND));
    fields.addAll(JobReader.REMARKS);
    fields.addAll(reader.get().fields());
    return Optional.of(
        reader.get().read(new PointName(entry.key()), Fields.of(map, what, ledger, fields)));
  }
}
