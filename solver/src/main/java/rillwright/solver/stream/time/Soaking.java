package rillwright.solver.stream.time;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.stream.time.WaterCircuit.Phase;

/** Gravel and filters, which take up water after the start and give it off after the stop. */
final class Soaking {
  /** Time in which they take up or give off most of it, s; a guess. */
  private static final double TIME_S = 60;

  private final List<Gravel> gravels = new ArrayList<>();
  private final List<Filter> filters = new ArrayList<>();

  /** Gravel under a cell, and the depth of water over it at which it is mostly soaked. */
  private record Gravel(int cell, int store, double volumeM3, double soakedM) {}

  /** A filter fed from some water. */
  private record Filter(int source, int store, double volumeM3) {}

  void addGravel(int cell, int store, double volumeM3, double soakedM) {
    gravels.add(new Gravel(cell, store, volumeM3, soakedM));
  }

  void addFilter(int source, int store, double volumeM3) {
    filters.add(new Filter(source, store, volumeM3));
  }

  /** Adds to what each store gains, m³/s; the level of gravel and filters is how full they are. */
  void move(double[] levels, double[] net, Phase phase) {
    for (Gravel gravel : gravels) {
      double depth = Math.max(0, levels[gravel.cell()]) / gravel.soakedM();
      double wet = -Math.expm1(-depth * depth);
      double flow = gravel.volumeM3() * (wet - levels[gravel.store()]) / TIME_S;
      net[gravel.cell()] -= flow;
      net[gravel.store()] += flow;
    }
    for (Filter filter : filters) {
      double full = phase == Phase.RUNNING ? 1 : 0;
      double flow = filter.volumeM3() * (full - levels[filter.store()]) / TIME_S;
      net[filter.source()] -= flow;
      net[filter.store()] += flow;
    }
  }
}
