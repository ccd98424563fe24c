package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Skimmer;

/**
 * Falls and outlets higher than any water that can come to them: above the level that feeds them,
 * or above what the shut-off heads of the pumps on the way add to it.
 */
final class ReachDetector implements NetworkDetector {
  static final String BEYOND_SHUT_OFF = "beyond-shut-off";

  @Override
  public List<Finding> findIn(Network network) {
    Map<PointName, Double> pumped = reaches(network, ReachDetector::shutOffHeadM);
    Map<PointName, Double> unpumped = reaches(network, ReachDetector::throughAPump);
    List<Finding> findings = new ArrayList<>();
    for (Point point : network.waysOut()) {
      double reach = pumped.get(point.name());
      boolean known = Double.isFinite(reach);
      if (known && point.spill().isPresent() && point.spill().get().levelM() >= reach) {
        double lack = point.spill().get().levelM() - reach;
        findings.add(
            reach > unpumped.get(point.name())
                ? beyondShutOff(point.name().value(), lack)
                : noPump(point.name().value(), lack));
      }
    }
    return findings;
  }

  /** What pumps of a line add at no flow, m; without bound where none is chosen yet. */
  private static double shutOffHeadM(Line line) {
    return line.has(PlannedPump.class)
        ? Double.POSITIVE_INFINITY
        : line.placed(Pump.class).stream()
            .mapToDouble(pump -> pump.part().set().publishedShutOffHeadM())
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

  private static Finding beyondShutOff(String at, double lackM) {
    return aboveReach(BEYOND_SHUT_OFF, at, lackM)
        .then(
            " what its water reaches at the pumps' shut-off head: nothing flows there. Check its"
                + " level and the pump's data sheet.");
  }

  private static Finding noPump(String at, double lackM) {
    return aboveReach("no-pump", at, lackM)
        .then(" the water that feeds it, and no pump is on the way: nothing flows there.");
  }

  private static Finding aboveReach(String code, String at, double lackM) {
    Finding finding = Finding.of(Severity.PROBLEM, code, at, "\"" + at + "\" lies ");
    return lackM > 0
        ? finding.length("aboveReach", lackM).then(" above")
        : finding.then("level with");
  }
}
