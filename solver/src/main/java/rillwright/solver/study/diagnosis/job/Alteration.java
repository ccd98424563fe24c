package rillwright.solver.study.diagnosis.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Tee;

/**
 * Changes to a job as built, gathered one by one and made together, so that two faults or a fault
 * and a shut valve can be at work at once. Places are those of the job as built.
 */
public final class Alteration {
  private final Network asBuilt;
  private final Map<LineName, LineEdits> lines = new LinkedHashMap<>();
  private final Map<PointName, Point> points = new LinkedHashMap<>();
  private final Map<PointName, Double> drawsAtTees = new LinkedHashMap<>();
  private final Map<PointName, Double> shareSeen = new LinkedHashMap<>();

  /** No changes yet. */
  public Alteration(Network asBuilt) {
    this.asBuilt = asBuilt;
  }

  /** The network as built. */
  public Network asBuilt() {
    return asBuilt;
  }

  private LineEdits edits(LineName line) {
    return lines.computeIfAbsent(line, name -> new LineEdits(asBuilt.line(name)));
  }

  /** Changes a part of a kind. */
  public <P extends Part> void changePart(PartPlace place, Class<P> kind, UnaryOperator<P> change) {
    LineEdits edits = edits(place.line());
    edits.replace(place.index(), change.apply(kind.cast(edits.part(place.index()))));
  }

  /** Multiplies the bore of a line and of all that stood in it as built. */
  public void narrow(LineName line, double factor) {
    edits(line).narrow(factor);
  }

  /** Puts a part into a line, just before one that is there. */
  public void addBefore(PartPlace place, Part part) {
    edits(place.line()).addBefore(place.index(), part);
  }

  /** Puts a part into a line, just after one that is there. */
  public void addAfter(PartPlace place, Part part) {
    edits(place.line()).addAfter(place.index(), part);
  }

  /** Takes a flow, m³/s, out of a line just after a part. */
  public void drawAfter(PartPlace place, double flowM3PerS) {
    edits(place.line()).drawAfter(place.index(), flowM3PerS);
  }

  /** Takes a flow, m³/s, out of the middle of a run. */
  public void drawInTheMiddleOf(PartPlace run, double flowM3PerS) {
    edits(run.line()).drawInTheMiddleOf(run.index(), flowM3PerS);
  }

  /** Takes a flow, m³/s, out of a tee. */
  public void drawAt(PointName tee, double flowM3PerS) {
    drawsAtTees.merge(tee, flowM3PerS, Double::sum);
  }

  /** Changes a point of a kind. */
  public <P extends Point> void changePoint(
      Class<P> kind, PointName name, UnaryOperator<P> change) {
    points.put(name, change.apply(kind.cast(point(name))));
  }

  private Point point(PointName name) {
    return points.getOrDefault(name, asBuilt.point(name));
  }

  /** The fall of a name with the changes made so far. */
  public Fall fall(PointName name) {
    return (Fall) point(name);
  }

  /** Loses a share of a fall's flow between its crest and where it is read. */
  public void loseAfter(PointName fall, double share) {
    shareSeen.merge(fall, 1 - share, (one, other) -> one * other);
  }

  /** The share of a fall's flow that is still there where it is read. */
  public double shareSeen(PointName fall) {
    return shareSeen.getOrDefault(fall, 1.0);
  }

  /** The network with all changes made. */
  public Network network() {
    return network(true);
  }

  /** The same, but for what is drawn at leaks and bypasses: what is cut off loses nothing. */
  public Network networkWithoutDraws() {
    return network(false);
  }

  private Network network(boolean withDraws) {
    List<Tee> tees = new ArrayList<>();
    List<Line> changedLines = new ArrayList<>();
    for (Line line : asBuilt.lines()) {
      LineEdits edits = lines.get(line.name());
      changedLines.addAll(edits == null ? List.of(line) : edits.pieces(withDraws, tees));
    }
    List<Point> changedPoints = new ArrayList<>();
    asBuilt.points().forEach(point -> changedPoints.add(point(point.name())));
    if (withDraws) {
      changedPoints.replaceAll(this::withDraw);
    }
    changedPoints.addAll(tees);
    return asBuilt.with(changedPoints, changedLines);
  }

  private Point withDraw(Point point) {
    Double draw = drawsAtTees.get(point.name());
    return draw != null && point instanceof Tee tee
        ? new Tee(tee.name(), tee.elevationM(), tee.drawM3PerS() + draw)
        : point;
  }

  /** Whether anything is drawn from the job that was not as built. */
  public boolean draws() {
    return !drawsAtTees.isEmpty() || lines.values().stream().anyMatch(LineEdits::draws);
  }

  /** The lines that were one line as built. */
  public List<LineName> piecesOf(LineName line) {
    LineEdits edits = lines.get(line);
    return edits == null
        ? List.of(line)
        : edits.pieces(true, new ArrayList<>()).stream().map(Line::name).toList();
  }
}
