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
import rillwright.solver.network.Tee;

/** Changes to one line; places are those of the line as built. */
final class LineEdits {
  private static final LineEnd NO_END = new LineEnd(EndLoss.NONE, Optional.empty());

  private record Cut(int index, boolean inTheMiddle, double drawM3PerS) {}

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
  void narrow(double factor) {
    asBuilt = asBuilt.narrowed(factor);
    parts.replaceAll(part -> part.narrowed(factor));
  }

  void drawAfter(int index, double drawM3PerS) {
    cuts.add(new Cut(index, false, drawM3PerS));
  }

  void drawInTheMiddleOf(int index, double drawM3PerS) {
    cuts.add(new Cut(index, true, drawM3PerS));
  }

  boolean draws() {
    return !cuts.isEmpty();
  }

  /**
   * The line in pieces, one if nothing is drawn from it.
   *
   * @param tees where pieces meet; added to
   */
  List<Line> pieces(boolean withDraws, List<Tee> tees) {
    List<List<Part>> pieces = new ArrayList<>();
    List<Part> piece = new ArrayList<>();
    pieces.add(piece);
    for (int i = 0; i < parts.size(); i++) {
      piece.addAll(before.get(i));
      Part rest = parts.get(i);
      for (Cut cut : cuts) {
        if (withDraws && cut.index() == i && cut.inTheMiddle() && rest instanceof Run run) {
          rest = new Run(run.lengthM() / 2, run.inside(), run.friction(), run.label(), run.wall());
          piece.add(rest);
          piece = cutHere(cut, pieces, tees);
        }
      }
      piece.add(rest);
      for (Cut cut : cuts) {
        if (withDraws && cut.index() == i && !cut.inTheMiddle()) {
          piece = cutHere(cut, pieces, tees);
        }
      }
      piece.addAll(after.get(i));
    }
    return lines(pieces, tees);
  }

  private static List<Part> cutHere(Cut cut, List<List<Part>> pieces, List<Tee> tees) {
    // a blank before a name sets it apart from every name in a file
    PointName name = new PointName(" leak " + (tees.size() + 1));
    tees.add(new Tee(name, java.util.OptionalDouble.empty(), cut.drawM3PerS()));
    List<Part> next = new ArrayList<>();
    pieces.add(next);
    return next;
  }

  private List<Line> lines(List<List<Part>> pieces, List<Tee> tees) {
    List<Line> lines = new ArrayList<>();
    int last = pieces.size() - 1;
    int firstTee = tees.size() - last;
    for (int i = 0; i <= last; i++) {
      lines.add(
          new Line(
              i == 0
                  ? asBuilt.name()
                  : new LineName(" piece " + i + " of " + asBuilt.name().value()),
              i == 0 ? asBuilt.from() : tees.get(firstTee + i - 1).name(),
              i == last ? asBuilt.to() : tees.get(firstTee + i).name(),
              asBuilt.pipeBore(),
              pieces.get(i),
              i == 0 ? asBuilt.entrance() : NO_END,
              i == last ? asBuilt.exit() : NO_END));
    }
    return lines;
  }
}
