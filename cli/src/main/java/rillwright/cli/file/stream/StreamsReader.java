package rillwright.cli.file.stream;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.outline.PointNames;
import rillwright.cli.file.point.PointTable;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.network.PointName;
import rillwright.solver.stream.Stream;
import rillwright.solver.stream.StreamItem;

/** Reads the section {@code streams}. */
public final class StreamsReader {
  private final PointTable points;
  private final Ledger ledger;
  private final StreamItemReader items;

  /** A reader that checks against the file's points and the catalogue's beds. */
  public StreamsReader(PointTable points, Catalogue catalogue, Ledger ledger) {
    this.points = points;
    this.ledger = ledger;
    this.items = new StreamItemReader(catalogue, ledger);
  }

  /** The streams of a project; of faulty ones nothing or stand-ins. */
  public List<Stream> read(Fields root) {
    List<Stream> streams = new ArrayList<>();
    for (Entry entry : root.findMap("streams").map(MapNode::entries).orElse(List.of())) {
      String what = "stream " + PlainText.quoted(entry.key());
      if (entry.value() instanceof MapNode map) {
        Fields fields = Fields.of(map, what, ledger, List.of("from", "to", "reaches"));
        Stream read = stream(entry.key(), fields);
        requireOwnFall(fields, read, streams);
        streams.add(read);
      } else {
        ledger.fault(
            entry.value().place(),
            what + ": expected fields (from, to, reaches), found " + entry.value().words());
      }
    }
    return streams;
  }

  private static void requireOwnFall(Fields fields, Stream stream, List<Stream> before) {
    for (Stream other : before) {
      if (fields.areSound() && other.from().equals(stream.from())) {
        fields.fault(
            "from",
            "stream "
                + PlainText.quoted(other.name())
                + " begins there too, and the water of a fall goes one way; for two ways home write"
                + " two falls");
      }
    }
  }

  private Stream stream(String name, Fields stream) {
    PointNames.require(stream, "from", points);
    PointNames.require(stream, "to", points);
    String from = stream.findText("from").orElse("");
    String to = stream.findText("to").orElse("");
    points
        .find(from)
        .filter(point -> !point.isWayOut())
        .ifPresent(
            point ->
                stream.fault(
                    "from", "a stream begins at a fall or an outlet, not at a " + point.kind()));
    points
        .find(to)
        .filter(point -> !(point instanceof Basin))
        .ifPresent(
            point -> stream.fault("to", "a stream ends in a basin, not in a " + point.kind()));
    points
        .find(from)
        .filter(Fall.class::isInstance)
        .flatMap(fall -> ((Fall) fall).returnsTo())
        .filter(home -> stream.areSound() && !home.equals(new PointName(to)))
        .ifPresent(
            home ->
                stream.fault(
                    "to",
                    "the fall "
                        + PlainText.quoted(from)
                        + " says that its water returns to "
                        + PlainText.quoted(home.value())
                        + "; say the same in both, or leave \"returns to\" out"));
    List<Node> written = stream.listItems("reaches");
    if (written.isEmpty() && stream.areSound()) {
      stream.fault("reaches", "expected a list of reaches, steps and pools");
    }
    List<StreamItem> read = new ArrayList<>();
    int number = 0;
    for (Node item : written) {
      number++;
      items.read(item, stream.what() + ": reach " + number).ifPresent(read::add);
    }
    return new Stream(name, new PointName(from), new PointName(to), read);
  }
}
