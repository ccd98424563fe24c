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

/**
 * Changes to a job as built, gathered one by one and made together, so that two faults or a fault
 * and a shut valve can be at work at once. Places are those of the job as built.
 */
public final class Alteration {
  private final Network asBuilt;
  private final JobFacts facts;
  private final Map<Shown, Double> shown = new LinkedHashMap<>();
  private final Map<LineName, LineEdits> lines = new LinkedHashMap<>();
  private final Map<PointName, Point> points = new LinkedHashMap<>();
  private final Map<PointName, List<Hole>> holesAtTees = new LinkedHashMap<>();
  private final Map<PointName, Double> shareSeen = new LinkedHashMap<>();
  private final Map<PointName, Double> shareLost = new LinkedHashMap<>();
  private final Map<LineName, Double> voltage = new LinkedHashMap<>();

  /** No changes yet. */
  public Alteration(Network asBuilt) {
    this(asBuilt, JobFacts.NONE);
  }

  /** No changes yet to a job of which more is known. */
  public Alteration(Network asBuilt, JobFacts facts) {
    this.asBuilt = asBuilt;
    this.facts = facts;
  }

  /** What is known of the job besides its network. */
  public JobFacts facts() {
    return facts;
  }

  /**
   * Something that can be seen.
   *
   * @param at name of the line or point
   * @param share how much is lost there: from some 15 % on nobody overlooks it
   */
  public void show(Look look, String at, double share) {
    shown.merge(new Shown(look, at), share, Math::max);
  }

  /** How much there is to be seen, as a share; 0 if nothing. */
  public double shown(Look look, String at) {
    return shown.getOrDefault(new Shown(look, at), 0.0);
  }

  private record Shown(Look look, String at) {}

  /** A part as changed so far. */
  public Part part(PartPlace place) {
    LineEdits edits = lines.get(place.line());
    return edits == null
        ? asBuilt.line(place.line()).parts().get(place.index())
        : edits.part(place.index());
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
    narrow(line, Narrowing.evenly(factor));
  }

  /** Multiplies bores in a line as built. */
  public void narrow(LineName line, Narrowing narrowing) {
    edits(line).narrow(narrowing);
  }

  /** Puts a part into a line, just before one that is there. */
  public void addBefore(PartPlace place, Part part) {
    edits(place.line()).addBefore(place.index(), part);
  }

  /** Puts a part into a line, just after one that is there. */
  public void addAfter(PartPlace place, Part part) {
    edits(place.line()).addAfter(place.index(), part);
  }

  /** Makes a hole in a line just after a part. */
  public void holeAfter(PartPlace place, Hole hole) {
    edits(place.line()).cut(place.index(), false, hole);
  }

  /** Makes a hole in the middle of a run. */
  public void holeInTheMiddleOf(PartPlace run, Hole hole) {
    edits(run.line()).cut(run.index(), true, hole);
  }

  /** Makes a hole in a tee. */
  public void holeAt(PointName tee, Hole hole) {
    holesAtTees.computeIfAbsent(tee, name -> new ArrayList<>()).add(hole);
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

  /**
   * A share of a fall's flow does not come to where it is read.
   *
   * @param lost whether it is lost to the pond, too
   */
  public void loseAfter(PointName fall, double share, boolean lost) {
    shareSeen.merge(fall, 1 - share, (one, other) -> one * other);
    if (lost) {
      shareLost.merge(fall, share, (one, other) -> one + other - one * other);
    }
  }

  /** The share of a fall's flow that is lost to the pond. */
  public double shareLost(PointName fall) {
    return shareLost.getOrDefault(fall, 0.0);
  }

  /** The share of a fall's flow that is still there where it is read. */
  public double shareSeen(PointName fall) {
    return shareSeen.getOrDefault(fall, 1.0);
  }

  /** Whether nothing of this changes what flows: water is lost on its way down, or only seen. */
  public boolean leavesNetwork() {
    return lines.isEmpty() && points.isEmpty() && holesAtTees.isEmpty();
  }

  /** Multiplies the voltage at a line's pumps. */
  public void supply(LineName line, double share) {
    voltage.merge(line, share, (one, other) -> one * other);
  }

  /** The share of its voltage that a line's pumps still get. */
  public double voltageShare(LineName line) {
    return voltage.getOrDefault(line, 1.0);
  }

  /** The network with all changes made. */
  public Network network() {
    Ways ways = new Ways();
    List<Line> changedLines = new ArrayList<>();
    for (Line line : asBuilt.lines()) {
      LineEdits edits = lines.get(line.name());
      changedLines.addAll(edits == null ? List.of(line) : edits.pieces(ways));
    }
    List<Point> changedPoints = new ArrayList<>();
    asBuilt.points().forEach(point -> changedPoints.add(point(point.name())));
    holesAtTees.forEach((tee, holes) -> holes.forEach(hole -> ways.out(tee, hole)));
    changedPoints.addAll(ways.points());
    changedLines.addAll(ways.lines());
    return asBuilt.with(changedPoints, changedLines);
  }

  /** The lines through which water is lost in {@link #network}. */
  public List<LineName> lossWays() {
    Ways ways = new Ways();
    lines.values().forEach(edits -> edits.pieces(ways));
    holesAtTees.forEach((tee, holes) -> holes.forEach(hole -> ways.out(tee, hole)));
    return ways.lost();
  }

  /** The lines that were one line as built. */
  public List<LineName> piecesOf(LineName line) {
    LineEdits edits = lines.get(line);
    return edits == null
        ? List.of(line)
        : edits.pieces(new Ways()).stream().map(Line::name).toList();
  }
}
