package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Skimmer;
import rillwright.solver.steady.SteadyState;

/**
 * Falls and outlets higher than any water that can come to them: above the level that feeds them,
 * or above what the shut-off heads of the pumps on the way add to it.
 */
final class ReachDetector implements NetworkDetector, Detector {
  static final String BEYOND_SHUT_OFF = "beyond-shut-off";

  /**
   * A fall or outlet above what reaches it.
   *
   * @param lackM by how much, m, 0 or more
   * @param pumped whether a pump is on the way
   * @param levelled whether it is reached where humps in pumps' curves are levelled
   */
  private record Lack(PointName point, double lackM, boolean pumped, boolean levelled) {}

  @Override
  public List<Finding> findIn(Network network) {
    return lacksIn(network).stream().map(it -> it.pumped ? beyondShutOff(it) : noPump(it)).toList();
  }

  /** Those that get water only because a hump in a pump's curve is levelled. */
  @Override
  public List<Finding> findIn(SteadyState state) {
    Network network = state.network();
    return network.placed(Pump.class).stream().noneMatch(it -> it.part().set().curve().isLevelled())
        ? List.of()
        : lacksIn(network).stream()
            .filter(it -> it.levelled && state.point(it.point).outflowM3PerS() > 0)
            .map(ReachDetector::mayNotStart)
            .toList();
  }

  private static List<Lack> lacksIn(Network network) {
    Map<PointName, Double> pumped =
        reaches(network, line -> atNoFlowM(line, PumpSet::publishedShutOffHeadM));
    List<Point> beyond =
        network.waysOut().stream()
            .filter(point -> isBeyond(point, pumped.get(point.name())))
            .toList();
    if (beyond.isEmpty()) {
      return List.of();
    }
    Map<PointName, Double> levelled =
        reaches(network, line -> atNoFlowM(line, set -> set.headAt(0)));
    Map<PointName, Double> unpumped = reaches(network, ReachDetector::throughAPump);
    List<Lack> lacks = new ArrayList<>();
    for (Point point : beyond) {
      double reach = pumped.get(point.name());
      double lack = point.spill().orElseThrow().levelM() - reach;
      lacks.add(
          new Lack(
              point.name(),
              lack,
              reach > unpumped.get(point.name()),
              levelled.get(point.name()) > reach + lack));
    }
    return lacks;
  }

  private static boolean isBeyond(Point point, double reachM) {
    return Double.isFinite(reachM)
        && point.spill().isPresent()
        && point.spill().get().levelM() >= reachM;
  }

  /** What pumps of a line add at no flow, m; without bound where none is chosen yet. */
  private static double atNoFlowM(Line line, ToDoubleFunction<PumpSet> headM) {
    return line.has(PlannedPump.class)
        ? Double.POSITIVE_INFINITY
        : line.placed(Pump.class).stream()
            .mapToDouble(pump -> headM.applyAsDouble(pump.part().set()))
            .sum();
  }

  /** Nothing comes through a pump that is not there. */
  private static double throughAPump(Line line) {
    return line.has(Pump.class) || line.has(PlannedPump.class) ? Double.NEGATIVE_INFINITY : 0;
  }

  /** How high water can stand at each point, m; negative without bound where none comes. */
  private static Map<PointName, Double> reaches(Network network, ToDoubleFunction<Line> added) {
    Map<PointName, Double> reaches = new HashMap<>();
    for (Point point : network.points()) {
      double source = point.drawM3PerS() < 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
      reaches.put(point.name(), point.heldHeadM().orElse(source));
    }
    Map<LineName, Double> adds = new HashMap<>();
    network.lines().forEach(line -> adds.put(line.name(), added.applyAsDouble(line)));
    boolean rises = true;
    for (int i = 0; rises && i < network.points().size(); i++) {
      rises = false;
      for (Line line : network.lines()) {
        double brought = reaches.get(line.from()) + adds.get(line.name());
        rises |= raise(network, reaches, line.to(), brought);
        if (runsBothWays(line)) {
          rises |= raise(network, reaches, line.from(), reaches.get(line.to()));
        }
      }
    }
    return reaches;
  }

  private static boolean raise(
      Network network, Map<PointName, Double> reaches, PointName point, double reachM) {
    boolean rises = reachM > reaches.get(point) && network.point(point).heldHeadM().isEmpty();
    if (rises) {
      reaches.put(point, reachM);
    }
    return rises;
  }

  private static boolean runsBothWays(Line line) {
    return !line.has(Pump.class)
        && !line.has(PlannedPump.class)
        && !line.has(CheckValve.class)
        && !line.has(Skimmer.class);
  }

  private static Finding beyondShutOff(Lack lack) {
    return aboveReach(BEYOND_SHUT_OFF, lack)
        .then(" what its water reaches at the pumps' shut-off head: ")
        .then(
            lack.levelled
                ? "nothing flows there, or a pump whose curve has a hump may not start."
                : "nothing flows there.")
        .then(" Check its level and the pump's data sheet.");
  }

  private static Finding mayNotStart(Lack lack) {
    return aboveReach("may-not-start", lack)
        .then(
            " what its water reaches at the pumps' shut-off head: a pump whose curve has a hump may"
                + " not start against that lift. Take a pump with more head at no flow, or lower"
                + " the lift.");
  }

  private static Finding noPump(Lack lack) {
    return aboveReach("no-pump", lack)
        .then(" the water that feeds it, and no pump is on the way: nothing flows there.");
  }

  private static Finding aboveReach(String code, Lack lack) {
    String at = lack.point.value();
    Finding finding = Finding.of(Severity.PROBLEM, code, at, "\"" + at + "\" lies ");
    return lack.lackM > 0
        ? finding.length("aboveReach", lack.lackM).then(" above")
        : finding.then("level with");
  }
}
