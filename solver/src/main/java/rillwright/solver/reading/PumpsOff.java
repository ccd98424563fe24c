package rillwright.solver.reading;

import java.util.List;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * A network with its pumps off, its pipes still full. Water behind a closed check valve stands at
 * the lowest crest, outlet or basin that it can drain to; where a pump has no check valve it runs
 * back, and gauges that no level holds have no reading.
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
    return runsBack(stopped.network())
        ? GaugeReading.listIn(stopped)
        : GaugeReading.listStanding(stopped);
  }

  /** The same network, all pumps at speed 0. */
  private static Network stopped(Network running) {
    Network network = running;
    for (Line line : running.lines()) {
      List<Part> parts = line.parts().stream().map(PumpsOff::stopped).toList();
      network = network.withLine(line.withParts(parts));
    }
    return network;
  }

  private static Part stopped(Part part) {
    return part instanceof Pump pump ? pump.atSpeed(0) : part;
  }

  private static boolean runsBack(Network network) {
    return network.lines().stream()
        .map(Line::parts)
        .anyMatch(
            parts ->
                parts.stream().anyMatch(Pump.class::isInstance)
                    && parts.stream().noneMatch(CheckValve.class::isInstance));
  }
}
