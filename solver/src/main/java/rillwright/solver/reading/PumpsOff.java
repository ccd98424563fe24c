package rillwright.solver.reading;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.topology.NetworkGraph;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * A network with its pumps off, its pipes still full. Water downstream of a closed check valve
 * stands at the lowest crest, outlet or basin that it can drain to; where a pump has no check valve
 * it runs back, and gauges that no level holds have no reading.
 */
public final class PumpsOff {
  private PumpsOff() {}

  /**
   * All gauges of a network with its pumps off, in the order of the network.
   *
   * @throws rillwright.solver.steady.NoBalance if there is no such state
   */
  public static List<GaugeReading> listReadings(Network running) {
    return listReadingsIn(SteadyStateFinder.find(stopped(running)));
  }

  /** The same of a state in which the pumps are off already. */
  public static List<GaugeReading> listReadingsIn(SteadyState stopped) {
    Set<LineName> runBack = runBack(stopped.network());
    List<GaugeReading> readings = new ArrayList<>(GaugeReading.listStanding(stopped));
    List<GaugeReading> held = GaugeReading.listIn(stopped);
    for (int i = 0; i < readings.size(); i++) {
      if (runBack.contains(readings.get(i).line())) {
        readings.set(i, held.get(i));
      }
    }
    return readings;
  }

  /** The same network, all pumps at speed 0. */
  static Network stopped(Network running) {
    return running.withLines(
        running.lines().stream()
            .filter(line -> line.has(Pump.class))
            .map(line -> line.withEach(Pump.class, pump -> pump.atSpeed(0)))
            .toList());
  }

  /** The lines from which water runs back through a pump: no check valve stands between. */
  static Set<LineName> runBack(Network network) {
    Set<LineName> found = new LinkedHashSet<>();
    Deque<Line> waiting = new ArrayDeque<>();
    for (Line line : network.lines()) {
      boolean pumped = line.has(Pump.class);
      if (pumped && !isHeld(line)) {
        found.add(line.name());
        waiting.add(line);
      }
    }
    NetworkGraph graph = new NetworkGraph(network);
    while (!waiting.isEmpty()) {
      PointName end = waiting.pop().to();
      if (network.point(end).heldHeadM().isPresent()) {
        continue;
      }
      for (Line next : graph.linesFrom(end)) {
        if (!isHeld(next) && found.add(next.name())) {
          waiting.add(next);
        }
      }
    }
    return found;
  }

  private static boolean isHeld(Line line) {
    return line.has(CheckValve.class);
  }
}
