package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.topology.NetworkGraph;
import rillwright.solver.steady.Model.Solved;

/**
 * Finds the steady state of a network.
 *
 * <p>A chamber is never drawn below its intake. Where the balance would, it is starved: what enters
 * it sees the intake's level, and what leaves it draws as from a lower level at which it takes
 * exactly what comes in.
 */
public final class SteadyStateFinder {
  /**
   * A chamber is starved if it stands lower than its intake by more than this, m: below any
   * measurement.
   */
  private static final double NOTICEABLE_M = 1e-9;

  private static final double INFLOW_TOLERANCE = 1e-13;
  private static final int MOST_INFLOW_ROUNDS = 300;

  private final Network network;
  private final Imposed imposed;
  private final Model model;

  private SteadyStateFinder(Network network, Imposed imposed) {
    this.network = network;
    this.imposed = imposed;
    this.model = new Model(network, imposed);
  }

  /**
   * The steady state of a network.
   *
   * @throws NoBalance if it has none
   */
  public static SteadyState find(Network network) {
    return new SteadyStateFinder(network, Imposed.NOTHING).run();
  }

  /**
   * The steady state with flows imposed. Chambers are not starved: a level below an intake tells
   * that the imposed flow is more than can be drawn there.
   *
   * @throws NoBalance if there is none
   */
  public static SteadyState impose(Network network, Imposed imposed) {
    SteadyStateFinder finder = new SteadyStateFinder(network, imposed);
    finder.model.check();
    return finder.describe(finder.model.balance(Map.of()), Map.of());
  }

  private SteadyState run() {
    model.check();
    Map<PointName, Starved> starved = new LinkedHashMap<>();
    Solved solved = model.balance(starved);
    for (int round = 0; round <= 2 * network.points().size(); round++) {
      Map<PointName, Starved> next = reconsider(solved, starved);
      if (next.keySet().equals(starved.keySet())) {
        break;
      }
      starved.clear();
      starved.putAll(next);
      solved = settleInflows(starved);
    }
    return describe(solved, starved);
  }

  /** The chambers that this balance says are starved, with the inflows that it has. */
  private Map<PointName, Starved> reconsider(Solved solved, Map<PointName, Starved> before) {
    Map<PointName, Starved> starved = new LinkedHashMap<>();
    NetworkGraph graph = new NetworkGraph(network);
    for (Point point : network.points()) {
      OptionalDouble head = solved.headM(point.name());
      if (!(point instanceof Chamber chamber)) {
        continue;
      }
      boolean was = before.containsKey(point.name());
      if (was && (head.isEmpty() || head.getAsDouble() <= chamber.intakeM())) {
        starved.put(point.name(), before.get(point.name()));
      } else if (!was
          && head.isPresent()
          && head.getAsDouble() < chamber.intakeM() - NOTICEABLE_M) {
        Set<LineName> entering =
            graph.linesAt(point.name()).stream()
                .filter(line -> flowInto(point.name(), line, solved) > 0)
                .map(Line::name)
                .collect(Collectors.toSet());
        starved.put(
            point.name(),
            new Starved(chamber.intakeM(), entering, inflow(point.name(), entering, solved)));
      }
    }
    return starved;
  }

  private static double flowInto(PointName point, Line line, Solved solved) {
    double flow = solved.flowM3PerS(line.name());
    return line.to().equals(point) ? flow : -flow;
  }

  private double inflow(PointName chamber, Set<LineName> entering, Solved solved) {
    double sum = 0;
    for (Line line : network.lines()) {
      if (entering.contains(line.name())) {
        sum += flowInto(chamber, line, solved);
      }
    }
    return sum;
  }

  /**
   * Balances until what is taken out of each starved chamber is what comes in; at once unless some
   * of it comes back.
   */
  private Solved settleInflows(Map<PointName, Starved> starved) {
    Solved solved = model.balance(starved);
    for (int round = 0; round < MOST_INFLOW_ROUNDS; round++) {
      double largestChange = 0;
      double largestInflow = 0;
      for (Map.Entry<PointName, Starved> entry : starved.entrySet()) {
        double now = inflow(entry.getKey(), entry.getValue().entering(), solved);
        largestChange = Math.max(largestChange, Math.abs(now - entry.getValue().inflowM3PerS()));
        largestInflow = Math.max(largestInflow, Math.abs(now));
        entry.setValue(entry.getValue().withInflow(now));
      }
      if (largestChange <= INFLOW_TOLERANCE * largestInflow) {
        break;
      }
      solved = model.balance(starved);
    }
    return solved;
  }

  private SteadyState describe(Solved solved, Map<PointName, Starved> starved) {
    List<PointState> points = new ArrayList<>();
    Description description = new Description(network, imposed, solved, starved);
    network.points().forEach(point -> points.add(description.of(point)));
    List<LineState> lines = network.lines().stream().map(description::of).toList();
    return new SteadyState(
        network,
        points,
        lines,
        solved.balance().iterations(),
        solved.balance().flowErrorM3PerS(),
        solved.balance().headErrorM());
  }
}
