package rillwright.solver.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Setting;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * A network with its pumps off, its pipes still full. Water behind a closed check valve stands at
 * the lowest crest, outlet or basin that it can drain to; where a pump has no check valve it runs
 * back, and such gauges have no reading.
 */
public final class PumpsOff {
  private final SteadyState state;
  private final Drains drains;

  private PumpsOff(SteadyState state) {
    this.state = state;
    this.drains = new Drains(state.network());
  }

  /**
   * All gauges of a network with its pumps off, in the order of the network.
   *
   * @throws rillwright.solver.steady.NoBalance if there is no such state
   */
  public static List<GaugeReading> listReadings(Network running) {
    return new PumpsOff(SteadyStateFinder.find(stopped(running))).readings();
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

  private List<GaugeReading> readings() {
    List<GaugeReading> readings = new ArrayList<>();
    for (GaugeReading reading : GaugeReading.listIn(state)) {
      readings.add(reading.pressurePa().isPresent() ? reading : standing(reading));
    }
    return readings;
  }

  /** What a gauge shows that no level holds: the water that stands behind what is closed. */
  private GaugeReading standing(GaugeReading reading) {
    LineName name = reading.line();
    LineState line = state.line(name);
    OptionalDouble head = OptionalDouble.empty();
    if (!line.open() && !runsBack()) {
      int at = placeOf(reading, line);
      if (isOpenBothWays(line, at, line.parts().size())) {
        head = drains.lowestM(line.line().to());
      } else if (isOpenBothWays(line, 0, at)) {
        head = drains.lowestM(line.line().from());
      }
    }
    return head.isPresent()
        ? new GaugeReading(
            name,
            reading.gauge(),
            OptionalDouble.of(
                reading.gauge().pressurePa(head.getAsDouble(), 0, state.network().water())))
        : reading;
  }

  private boolean runsBack() {
    return state.network().lines().stream()
        .map(Line::parts)
        .anyMatch(
            parts ->
                parts.stream().anyMatch(Pump.class::isInstance)
                    && parts.stream().noneMatch(CheckValve.class::isInstance));
  }

  private static int placeOf(GaugeReading reading, LineState line) {
    return line.parts().stream().map(PartState::part).toList().indexOf(reading.gauge());
  }

  private boolean isOpenBothWays(LineState line, int first, int end) {
    Setting setting = state.network().settingOf(line.line());
    for (Part part : line.line().parts().subList(first, end)) {
      HeadLaw law = part.law(setting);
      if (!(law.leastFlow() < 0 && law.greatestFlow() > 0)) {
        return false;
      }
    }
    return true;
  }
}
