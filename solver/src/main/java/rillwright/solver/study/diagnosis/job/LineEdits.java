package rillwright.solver.study.diagnosis.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Run;

/** Changes to one line; places are those of the line as built. */
final class LineEdits {
  private static final LineEnd NO_END = new LineEnd(EndLoss.NONE, Optional.empty());

  private record Cut(int index, boolean inTheMiddle, Hole hole) {}

  private Line asBuilt;
  private final List<Part> parts;
  private final List<List<Part>> before = new ArrayList<>();
  private final List<List<Part>> after = new ArrayList<>();
  private final List<Cut> cuts = new ArrayList<>();

  LineEdits(Line asBuilt) {
    this.asBuilt = asBuilt;
    this.parts = new ArrayList<>(asBuilt.parts());
    parts.forEach(
        part -> {
          before.add(new ArrayList<>());
          after.add(new ArrayList<>());
        });
  }

  Part part(int index) {
    return parts.get(index);
  }

  void replace(int index, Part part) {
    parts.set(index, part);
  }

  void addBefore(int index, Part part) {
    before.get(index).add(part);
  }

  void addAfter(int index, Part part) {
    after.get(index).add(0, part);
  }

  /** Narrows what stood in the line as built; parts put in since stay as they are. */
  void narrow(Narrowing narrowing) {
    asBuilt = narrowing.frame(asBuilt);
    for (int i = 0; i < parts.size(); i++) {
      parts.set(i, parts.get(i).narrowed(narrowing.ofPart(i)));
    }
  }

  void cut(int index, boolean inTheMiddle, Hole hole) {
    cuts.add(new Cut(index, inTheMiddle, hole));
  }

  /**
   * The line in pieces, one if it has no hole.
   *
   * @param ways where pieces meet and what runs out there; added to
   */
  List<Line> pieces(Ways ways) {
    List<PointName> tees = new ArrayList<>();
    List<List<Part>> pieces = new ArrayList<>();
    List<Part> piece = new ArrayList<>();
    pieces.add(piece);
    for (int i = 0; i < parts.size(); i++) {
      piece.addAll(before.get(i));
      Part rest = parts.get(i);
      for (Cut cut : cuts) {
        if (cut.index() == i && cut.inTheMiddle() && rest instanceof Run run) {
          rest = new Run(run.lengthM() / 2, run.inside(), run.friction(), run.label(), run.wall());
          piece.add(rest);
          tees.add(ways.cut(cut.hole()));
          piece = new ArrayList<>();
          pieces.add(piece);
        }
      }
      piece.add(rest);
      for (Cut cut : cuts) {
        if (cut.index() == i && !cut.inTheMiddle()) {
          tees.add(ways.cut(cut.hole()));
          piece = new ArrayList<>();
          pieces.add(piece);
        }
      }
      piece.addAll(after.get(i));
    }
    return lines(pieces, tees);
  }

  private List<Line> lines(List<List<Part>> pieces, List<PointName> tees) {
    List<Line> lines = new ArrayList<>();
    int last = pieces.size() - 1;
    for (int i = 0; i <= last; i++) {
      lines.add(
          new Line(
              i == 0
                  ? asBuilt.name()
                  : new LineName(" piece " + i + " of " + asBuilt.name().value()),
              i == 0 ? asBuilt.from() : tees.get(i - 1),
              i == last ? asBuilt.to() : tees.get(i),
              asBuilt.pipeBore(),
              pieces.get(i),
              i == 0 ? asBuilt.entrance() : NO_END,
              i == last ? asBuilt.exit() : NO_END));
    }
    return lines;
  }
}
