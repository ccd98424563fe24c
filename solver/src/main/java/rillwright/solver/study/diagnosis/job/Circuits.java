package rillwright.solver.study.diagnosis.job;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.topology.NetworkGraph;
import rillwright.solver.steady.SteadyState;

/**
 * The circuits of a network: lines that water joins without an open basin between.
 *
 * @param pumpedM3PerS what the pumps of each line's circuit move together, m³/s
 * @param firstLines the first line at each point that has one
 */
public record Circuits(Map<LineName, Double> pumpedM3PerS, Map<PointName, LineName> firstLines) {
  public Circuits {
    pumpedM3PerS = Map.copyOf(pumpedM3PerS);
    firstLines = Map.copyOf(firstLines);
  }

  /** Those of a state's network: each line is met once. */
  static Circuits in(SteadyState state) {
    NetworkGraph graph = new NetworkGraph(state.network());
    Map<LineName, Double> pumped = new HashMap<>();
    Map<PointName, LineName> first = new HashMap<>();
    for (Line line : state.network().lines()) {
      first.putIfAbsent(line.from(), line.name());
      first.putIfAbsent(line.to(), line.name());
      if (!pumped.containsKey(line.name())) {
        Set<LineName> circuit = circuitOf(line, graph);
        double sum =
            circuit.stream()
                .filter(name -> state.network().line(name).has(Pump.class))
                .mapToDouble(name -> state.line(name).flowM3PerS())
                .sum();
        circuit.forEach(name -> pumped.put(name, sum));
      }
    }
    return new Circuits(pumped, first);
  }

  private static Set<LineName> circuitOf(Line start, NetworkGraph graph) {
    Set<LineName> circuit = new HashSet<>(Set.of(start.name()));
    Deque<Line> waiting = new ArrayDeque<>(List.of(start));
    Set<PointName> met = new HashSet<>();
    while (!waiting.isEmpty()) {
      Line line = waiting.pop();
      for (PointName end : List.of(line.from(), line.to())) {
        if (graph.network().point(end).heldHeadM().isEmpty() && met.add(end)) {
          graph.linesAt(end).stream()
              .filter(next -> circuit.add(next.name()))
              .forEach(waiting::push);
        }
      }
    }
    return circuit;
  }
}
