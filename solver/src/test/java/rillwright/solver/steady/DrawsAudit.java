package rillwright.solver.steady;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;

/**
 * How much of what is drawn and put in could be met at best: paths of free capacity, one after the
 * other, as Ford and Fulkerson have it. A line from held water into a chamber brings at most what
 * it passes down to the chamber's intake.
 */
final class DrawsAudit {
  private static final String SOURCE = "source";
  private static final String SINK = "sink";
  private static final String WORLD = "world";
  private static final double PLENTY = 1e3;

  private final Network network;
  private final Map<String, Map<String, Double>> free = new HashMap<>();

  private DrawsAudit(Network network) {
    this.network = network;
  }

  /** What cannot be met of all draws together, as a share of them. */
  static double unmetShare(Network network) {
    return new DrawsAudit(network).run();
  }

  private double run() {
    double drawn = 0;
    double putIn = 0;
    for (Point point : network.points()) {
      String name = "at " + point.name().value();
      double draw = point.drawM3PerS();
      drawn += Math.max(0, draw);
      putIn += Math.max(0, -draw);
      addFree(name, SINK, Math.max(0, draw));
      addFree(SOURCE, name, Math.max(0, -draw));
      boolean held = point.heldHeadM().isPresent();
      double sucks = point.spill().map(spill -> -spill.law().leastFlow()).orElse(0.0);
      addFree(WORLD, name, held ? PLENTY : Math.min(PLENTY, Math.max(0, sucks)));
      addFree(name, WORLD, held || point.spill().isPresent() ? PLENTY : 0);
    }
    addFree(SOURCE, WORLD, drawn);
    addFree(WORLD, SINK, putIn);
    for (Line line : network.lines()) {
      String from = "at " + line.from().value();
      String to = "at " + line.to().value();
      HeadLaw law = network.lawOf(line);
      addFree(from, to, capacity(line, law));
      addFree(to, from, Math.min(PLENTY, Math.max(0, -law.leastFlow())));
    }
    double met = 0;
    for (double more = augment(); more > 0; more = augment()) {
      met += more;
    }
    return 1 - met / (drawn + putIn);
  }

  private double capacity(Line line, HeadLaw law) {
    double most = Math.min(PLENTY, Math.max(0, law.greatestFlow()));
    OptionalDouble held = network.point(line.from()).heldHeadM();
    if (held.isEmpty() || !(network.point(line.to()) instanceof Chamber chamber)) {
      return most;
    }
    double drop = held.getAsDouble() - chamber.intakeM();
    double low = 0;
    double high = most;
    for (int i = 0; i < 200; i++) {
      double middle = (low + high) / 2;
      boolean passes = law.headLossAt(middle) < drop;
      low = passes ? middle : low;
      high = passes ? high : middle;
    }
    return high;
  }

  private void addFree(String from, String to, double capacity) {
    if (capacity > 0) {
      free.computeIfAbsent(from, name -> new LinkedHashMap<>()).merge(to, capacity, Double::sum);
    }
  }

  /** Fills the shortest path from source to sink that has capacity left; what it added. */
  private double augment() {
    Map<String, String> cameFrom = new HashMap<>(Map.of(SOURCE, SOURCE));
    ArrayDeque<String> waiting = new ArrayDeque<>(List.of(SOURCE));
    while (!waiting.isEmpty() && !cameFrom.containsKey(SINK)) {
      String at = waiting.poll();
      free.getOrDefault(at, Map.of())
          .forEach(
              (next, capacity) -> {
                if (capacity > 1e-18 && cameFrom.putIfAbsent(next, at) == null) {
                  waiting.add(next);
                }
              });
    }
    if (!cameFrom.containsKey(SINK)) {
      return 0;
    }
    List<String> path = new ArrayList<>(List.of(SINK));
    while (!path.get(0).equals(SOURCE)) {
      path.add(0, cameFrom.get(path.get(0)));
    }
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < path.size(); i++) {
      least = Math.min(least, free.get(path.get(i - 1)).get(path.get(i)));
    }
    for (int i = 1; i < path.size(); i++) {
      double taken = least;
      free.get(path.get(i - 1)).compute(path.get(i), (name, capacity) -> capacity - taken);
      addFree(path.get(i), path.get(i - 1), least);
    }
    return least;
  }
}
