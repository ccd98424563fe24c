package rillwright.cli.file.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.field.Pieces;
import rillwright.cli.file.part.PartReaders;
import rillwright.cli.file.part.PipeReader;
import rillwright.cli.file.point.PointTable;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.curves.wording.PlainText;

/** Reads the section {@code lines}. */
public final class LinesReader {
  private final PointTable points;
  private final PartReaders readers;
  private final LineReader reader;
  private final Ledger ledger;

  /**
   * A reader.
   *
   * @param points the file's points
   * @param readers of its parts
   * @param pipes of its lines' pipes
   */
  public LinesReader(PointTable points, PartReaders readers, PipeReader pipes, Ledger ledger) {
    this.points = points;
    this.readers = readers;
    this.reader = new LineReader(points, readers, pipes);
    this.ledger = ledger;
  }

  /** Names of the fields of a line. */
  public static List<String> fields() {
    return LineReader.FIELDS;
  }

  /**
   * The lines of a project whose ends are known.
   *
   * @param pieces that are known
   */
  public List<PlacedLine> read(Fields root, Pieces<Optional<PlacedLine>> pieces) {
    List<PlacedLine> lines = new ArrayList<>();
    for (Entry entry : root.findMap("lines").map(MapNode::entries).orElse(List.of())) {
      String what = "line " + PlainText.quoted(entry.key());
      if (entry.key().isBlank()) {
        ledger.fault(entry.keyPlace(), what + ": a line needs a name");
      }
      if (entry.value() instanceof MapNode map) {
        pieces.read(entry, around(map), ledger, () -> line(entry, map, what)).ifPresent(lines::add);
      } else {
        ledger.fault(
            entry.value().place(),
            what
                + ": expected fields such as {from: pond, to: fall}, found "
                + entry.value().words());
      }
    }
    return lines;
  }

  private Optional<PlacedLine> line(Entry entry, MapNode map, String what) {
    Fields fields = Fields.of(map, what, ledger, LineReader.FIELDS);
    return reader.read(entry.key(), entry.keyPlace(), fields);
  }

  /** The points at its ends, and what its parts are read by. */
  private List<?> around(MapNode line) {
    return List.of(
        line.findText("from").flatMap(points::find),
        line.findText("to").flatMap(points::find),
        readers.around(line));
  }
}
