package rillwright.solver.reading;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Point;
import rillwright.solver.network.Valve;
import rillwright.solver.network.topology.NetworkGraph;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * A pump that runs against shut valves, for as long as it takes to read a gauge.
 *
 * @param pump the pump
 * @param shutIn the lines whose last valve is shut for it; at least one
 * @param readings the gauges between the pump and what is shut that show its shut-off head
 */
public record ShutOff(PumpPlace pump, List<LineName> shutIn, List<GaugeReading> readings) {
  public ShutOff {
    shutIn = List.copyOf(shutIn);
    readings = List.copyOf(readings);
  }

  /**
   * The test at a pump: its own line's last valve shut, or without one the valves of all lines that
   * it feeds; empty if no valves can stop its flow.
   */
  public static Optional<ShutOff> of(Network running, PumpPlace pump) {
    List<LineName> shutIn = toShut(running, pump);
    if (shutIn.isEmpty()) {
      return Optional.empty();
    }
    SteadyState state;
    try {
      state = SteadyStateFinder.find(withValvesShut(running, shutIn));
    } catch (NoBalance drawsNeedTheFlow) {
      return Optional.empty();
    }
    boolean stopped = state.line(pump.line()).flowM3PerS() == 0;
    return stopped
        ? Optional.of(new ShutOff(pump, shutIn, readings(state, pump)))
        : Optional.empty();
  }

  /** A network with the last valve of some lines shut. */
  static Network withValvesShut(Network running, List<LineName> lines) {
    return running.withLines(lines.stream().map(name -> shut(running.line(name))).toList());
  }

  private static Line shut(Line line) {
    int last = lastValve(line);
    return line.withPart(last, ((Valve) line.parts().get(last)).shut());
  }

  private static int lastValve(Line line) {
    return line.placed(Valve.class).stream().mapToInt(Placed::index).max().orElse(-1);
  }

  /**
   * The lines whose valves stop what a pump gives; none if some way has no valve. Water that comes
   * round in a ring to a line looked at already meets nothing new there.
   */
  private static List<LineName> toShut(Network network, PumpPlace pump) {
    NetworkGraph graph = new NetworkGraph(network);
    Line pumped = network.line(pump.line());
    List<LineName> shutIn = new ArrayList<>();
    Set<LineName> seen = new HashSet<>(Set.of(pump.line()));
    Deque<Line> ahead = new ArrayDeque<>(List.of(pumped));
    while (!ahead.isEmpty()) {
      Line line = ahead.remove();
      if (lastValve(line) >= (line.name().equals(pump.line()) ? pump.partIndex() + 1 : 0)) {
        shutIn.add(line.name());
        continue;
      }
      Point end = network.point(line.to());
      List<Line> onwards = graph.linesFrom(end.name());
      if (end.heldHeadM().isPresent() || end.spill().isPresent() || onwards.isEmpty()) {
        return List.of();
      }
      onwards.stream().filter(onward -> seen.add(onward.name())).forEach(ahead::add);
    }
    return shutIn;
  }

  private static List<GaugeReading> readings(SteadyState state, PumpPlace pump) {
    Line line = state.network().line(pump.line());
    int shut = lastValve(line) > pump.partIndex() ? lastValve(line) : line.parts().size();
    List<GaugeReading> readings = new ArrayList<>();
    for (GaugeReading reading : GaugeReading.listStanding(state)) {
      boolean between = reading.partIndex() > pump.partIndex() && reading.partIndex() < shut;
      if (reading.line().equals(line.name()) && between && reading.pressurePa().isPresent()) {
        readings.add(reading);
      }
    }
    return readings;
  }
}
