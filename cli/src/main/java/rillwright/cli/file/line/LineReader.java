package rillwright.cli.file.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.job.JobReader;
import rillwright.cli.file.part.PartReaders;
import rillwright.cli.file.part.PipeReader;
import rillwright.cli.file.part.PipeSpec;
import rillwright.cli.file.part.Surroundings;
import rillwright.cli.file.part.Surroundings.NearbyRun;
import rillwright.cli.file.point.PointTable;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.Bore;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** Reads one line. */
final class LineReader {
  static final List<String> FIELDS =
      Stream.concat(
              Stream.of("from", "to", "pipe", "parts", EndReader.ENTRANCE, EndReader.EXIT),
              JobReader.REMARKS.stream())
          .toList();

  private final PointTable points;
  private final PartReaders readers;
  private final PipeReader pipes;

  LineReader(PointTable points, PartReaders readers, PipeReader pipes) {
    this.points = points;
    this.readers = readers;
    this.pipes = pipes;
  }

  /** The line; empty if an end of it is not known. */
  Optional<PlacedLine> read(String name, Place place, Fields fields) {
    Optional<String> from = end(fields, "from");
    Optional<String> to = end(fields, "to");
    if (from.isPresent() && from.equals(to)) {
      fields.fault("to", "the line ends where it begins");
    }
    PipeSpec pipe =
        fields
            .findFields("pipe", PipeReader.FIELDS)
            .map(below -> pipes.read(below, Optional.empty()))
            .orElse(PipeSpec.NOTHING);
    List<PartItem> items = PartItem.listOf(fields, readers);
    Optional<Point> start = from.flatMap(points::find);
    Optional<Point> finish = to.flatMap(points::find);
    List<Part> parts = parts(items, pipe, start, fields);
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    boolean takesWaterIn = !items.isEmpty() && items.get(0).reader().takesWaterIn();
    Line line =
        new Line(
            new LineName(name),
            nameOf(start, from.get()),
            nameOf(finish, to.get()),
            pipe.bore(),
            parts,
            EndReader.read(
                fields,
                EndReader.ENTRANCE,
                start,
                pipe.bore().or(() -> firstBore(parts)),
                takesWaterIn ? EndLoss.NONE : usual(start)),
            EndReader.read(
                fields,
                EndReader.EXIT,
                finish,
                pipe.bore().or(() -> lastBore(parts)),
                usual(finish)));
    return Optional.of(new PlacedLine(line, place, items.stream().map(PartItem::place).toList()));
  }

  private Optional<String> end(Fields fields, String field) {
    Optional<String> name = fields.requireText(field, "pond");
    if (name.isPresent() && !points.has(name.get())) {
      fields.unknown(
          field, "there is no point " + PlainText.quoted(name.get()), name.get(), points.names());
      return Optional.empty();
    }
    return name;
  }

  /** The name as the point itself has it: the same object is found sooner among many. */
  private static PointName nameOf(Optional<Point> point, String written) {
    return point.map(Point::name).orElseGet(() -> new PointName(written));
  }

  private static EndLoss usual(Optional<Point> point) {
    return point.map(Point::usualEndLoss).orElse(EndLoss.NONE);
  }

  /** Lengths of pipe first, because the other parts may stand in their bore. */
  private static List<Part> parts(
      List<PartItem> items, PipeSpec pipe, Optional<Point> start, Fields line) {
    List<Optional<Part>> parts =
        new ArrayList<>(Collections.nCopies(items.size(), Optional.empty()));
    Surroundings bare = Surroundings.ofRuns(pipe, start);
    for (int i = 0; i < items.size(); i++) {
      if (items.get(i).reader().isPipe()) {
        parts.set(i, items.get(i).read(bare, line.ledger()));
      }
    }
    List<Optional<Part>> runs = List.copyOf(parts);
    for (int i = 0; i < items.size(); i++) {
      if (!items.get(i).reader().isPipe()) {
        parts.set(i, items.get(i).read(around(i, items, runs, bare), line.ledger()));
      }
    }
    return parts.stream().flatMap(Optional::stream).toList();
  }

  private static Surroundings around(
      int index, List<PartItem> items, List<Optional<Part>> runs, Surroundings bare) {
    int before = index;
    while (before >= 0 && runs.get(before).isEmpty()) {
      before--;
    }
    int after = index;
    while (after < runs.size() && runs.get(after).isEmpty()) {
      after++;
    }
    return new Surroundings(
        bare.pipe(), nearby(before, items, runs), nearby(after, items, runs), bare.start());
  }

  /** The run at a place, where that is a place of a run. */
  private static Optional<NearbyRun> nearby(
      int place, List<PartItem> items, List<Optional<Part>> runs) {
    return place < 0 || place == runs.size()
        ? Optional.empty()
        : Optional.of(
            new NearbyRun(runs.get(place).flatMap(Part::bore), items.get(place).material()));
  }

  private static Optional<Bore> firstBore(List<Part> parts) {
    return parts.stream().map(Part::bore).flatMap(Optional::stream).findFirst();
  }

  private static Optional<Bore> lastBore(List<Part> parts) {
    return parts.stream().map(Part::bore).flatMap(Optional::stream).reduce((one, next) -> next);
  }
}
