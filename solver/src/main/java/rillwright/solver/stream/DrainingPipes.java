package rillwright.solver.stream;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Tee;

/**
 * The pipes that drain back through a pump when it stops, for lack of a check valve: straight
 * between known elevations (ends, gauges, high points), from the water's level upwards.
 *
 * @param pumpLine the line of the pump
 * @param pieces of pipe with their ends' elevations; copied
 */
public record DrainingPipes(Line pumpLine, List<Piece> pieces) {
  /** How thick water is computed in a pipe that lies level, m. */
  private static final double LEVEL_M = 1e-3;

  public DrainingPipes {
    pieces = List.copyOf(pieces);
  }

  /**
   * A straight piece.
   *
   * @param lowM elevation of its lower end
   * @param highM elevation of its upper end, above the lower
   * @param volumeM3 water in it
   */
  public record Piece(double lowM, double highM, double volumeM3) {
    /** Area of its water surface, m². */
    public double areaM2() {
      return volumeM3 / (highM - lowM);
    }
  }

  /** The draining pipes downstream of each pump of a network without a check valve. */
  public static List<DrainingPipes> listIn(Network network) {
    List<DrainingPipes> all = new ArrayList<>();
    for (Line line : network.lines()) {
      if (line.has(Pump.class) && !hasCheckValve(line)) {
        List<Piece> pieces = new ArrayList<>();
        downstreamOf(network, line).forEach(each -> addPieces(pieces, network, each));
        all.add(new DrainingPipes(line, pieces));
      }
    }
    return all;
  }

  private static boolean hasCheckValve(Line line) {
    return line.has(CheckValve.class);
  }

  /** The pump's line and those that no check valve and no open water keeps from it. */
  private static List<Line> downstreamOf(Network network, Line pumpLine) {
    List<Line> lines = new ArrayList<>(List.of(pumpLine));
    Set<PointName> seen = new HashSet<>(Set.of(pumpLine.from()));
    Deque<PointName> waiting = new ArrayDeque<>(List.of(pumpLine.to()));
    while (!waiting.isEmpty()) {
      PointName point = waiting.remove();
      if (!seen.add(point) || !(network.point(point) instanceof Tee)) {
        continue;
      }
      for (Line line : network.lines()) {
        boolean touches = line.from().equals(point) || line.to().equals(point);
        if (touches && !lines.contains(line) && !hasCheckValve(line)) {
          lines.add(line);
          waiting.add(line.from().equals(point) ? line.to() : line.from());
        }
      }
    }
    return lines;
  }

  private static void addPieces(List<Piece> pieces, Network network, Line line) {
    double before = elevation(network.point(line.from()));
    double volume = 0;
    for (Part part : line.parts()) {
      if (part instanceof Run run) {
        volume += run.volumeM3();
      }
      OptionalDouble known = elevation(part);
      if (known.isPresent()) {
        add(pieces, before, known.getAsDouble(), volume);
        before = known.getAsDouble();
        volume = 0;
      }
    }
    add(pieces, before, elevation(network.point(line.to())), volume);
  }

  private static void add(List<Piece> pieces, double from, double to, double volume) {
    if (volume > 0) {
      double low = Math.min(from, to);
      pieces.add(new Piece(low, Math.max(Math.max(from, to), low + LEVEL_M), volume));
    }
  }

  private static OptionalDouble elevation(Part part) {
    if (part instanceof Gauge gauge) {
      return OptionalDouble.of(gauge.elevationM());
    }
    return part instanceof HighPoint high
        ? OptionalDouble.of(high.elevationM())
        : OptionalDouble.empty();
  }

  private static double elevation(Point point) {
    if (point instanceof Tee tee) {
      return tee.elevationM().orElse(0);
    }
    if (point instanceof Chamber chamber) {
      return chamber.intakeM();
    }
    if (point instanceof Outlet outlet) {
      return outlet.elevationM();
    }
    return point instanceof Fall fall ? fall.crestM() : ((Basin) point).levelM();
  }

  /** Water in them above a level, m³. */
  public double volumeAboveM3(double levelM) {
    double volume = 0;
    for (Piece piece : pieces) {
      double low = Math.max(levelM, piece.lowM());
      volume += piece.areaM2() * Math.max(0, piece.highM() - low);
    }
    return volume;
  }

  /** Them as one tank above a level: its area by level; one row if nothing stands above it. */
  public BasinShape shapeAbove(double levelM) {
    TreeSet<Double> levels = new TreeSet<>(Set.of(levelM));
    for (Piece piece : pieces) {
      levels.add(Math.max(levelM, piece.lowM()));
      levels.add(Math.max(levelM, piece.highM()));
    }
    List<BasinShape.Row> rows = new ArrayList<>();
    double below = levelM;
    for (double level : levels) {
      if (level > below) {
        double middle = (below + level) / 2;
        double area =
            pieces.stream()
                .filter(piece -> piece.lowM() < middle && middle < piece.highM())
                .mapToDouble(Piece::areaM2)
                .sum();
        rows.add(new BasinShape.Row(below, area));
        rows.add(new BasinShape.Row(level, area));
        below = level;
      }
    }
    return new BasinShape(rows.isEmpty() ? List.of(new BasinShape.Row(levelM, 0)) : rows);
  }
}
