package rillwright.solver.stream;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * A plan with its pumps running and its basins held at some levels: what flows, and where the water
 * is that has left the basins.
 *
 * @param plan which
 * @param state of the network
 * @param streams in the order of the plan
 * @param transitFrom water in transit by the basin that it came from
 */
public record RunningWater(
    StreamPlan plan,
    SteadyState state,
    List<StreamState> streams,
    Map<PointName, Transit> transitFrom) {
  private static final double LOST_SHARE = 0.01;

  /**
   * The plan with its basins held at levels, m.
   *
   * @throws rillwright.solver.steady.NoBalance if the network has no balanced state
   */
  static RunningWater at(StreamPlan plan, Map<PointName, Double> levelM) {
    return of(plan, SteadyStateFinder.find(held(plan, levelM)));
  }

  /**
   * The same plan with its basins held at other levels, m; the search begins at what flows here.
   *
   * @throws rillwright.solver.steady.NoBalance if the network has no balanced state
   */
  RunningWater at(Map<PointName, Double> levelM) {
    return of(plan, SteadyStateFinder.find(held(plan, levelM), state));
  }

  private static Network held(StreamPlan plan, Map<PointName, Double> levelM) {
    Network network = plan.network();
    for (Map.Entry<PointName, Double> level : levelM.entrySet()) {
      Basin basin = (Basin) network.point(level.getKey());
      network = network.withPoint(basin.withLevel(level.getValue()));
    }
    return network;
  }

  private static RunningWater of(StreamPlan plan, SteadyState state) {
    List<StreamState> streams =
        plan.streams().stream()
            .map(stream -> StreamState.of(stream, state.point(stream.from()).outflowM3PerS()))
            .toList();
    RunningWater water = new RunningWater(plan, state, streams, new LinkedHashMap<>());
    water.compute();
    return water;
  }

  private void compute() {
    WaterSources sources = new WaterSources(state);
    streams.forEach(stream -> add(sources.of(stream.stream().from()), stream.transit()));
    for (Fall fall : state.network().points(Fall.class)) {
      FallBox box = plan.boxes().get(fall.name());
      if (box != null) {
        double head = fall.weir().headAt(Math.max(0, state.point(fall.name()).outflowM3PerS()));
        add(sources.of(fall.name()), new Transit(0, 0, 0, box.areaM2() * head, 0, 0));
      }
    }
    for (LineState line : state.lines()) {
      double holds = line.line().filtersHoldM3();
      if (holds > 0 && line.flowM3PerS() != 0) {
        add(sources.of(line.line().from()), new Transit(0, 0, 0, 0, holds, 0));
      }
    }
    for (DrainingPipes pipes : DrainingPipes.listIn(state.network())) {
      Optional<PointName> source = sources.of(pipes.pumpLine().from());
      boolean runs = state.line(pipes.pumpLine().name()).flowM3PerS() > 0;
      if (source.isPresent() && runs) {
        double level = ((Basin) plan.network().point(source.get())).levelM();
        add(source, new Transit(0, 0, 0, 0, 0, pipes.volumeAboveM3(level)));
      }
    }
  }

  private void add(Optional<PointName> source, Transit transit) {
    source.ifPresent(basin -> transitFrom.merge(basin, transit, Transit::plus));
  }

  /** Water in transit from a basin. */
  public Transit transitFrom(PointName basin) {
    return transitFrom.getOrDefault(basin, Transit.NONE);
  }

  /** All water in transit. */
  public Transit transit() {
    return transitFrom.values().stream().reduce(Transit.NONE, Transit::plus);
  }

  /** How much more water may be in streams from a basin than is computed, m³. */
  double moreInTransitFromM3(PointName basin) {
    WaterSources sources = new WaterSources(state);
    return streams.stream()
        .filter(stream -> sources.isFrom(basin, stream.stream().from()))
        .flatMap(stream -> stream.items().stream())
        .mapToDouble(item -> item.mostVolumeM3() - item.volumeM3())
        .sum();
  }

  /**
   * Water that chambers fed from a basin have given off since they stood at its level at rest, m³;
   * of chambers whose area is known.
   */
  double leftChambersM3(Basin atRest) {
    WaterSources sources = new WaterSources(state);
    double left = 0;
    for (Chamber chamber : state.network().points(Chamber.class)) {
      OptionalDouble level = state.point(chamber.name()).headM();
      if (chamber.areaM2().isPresent()
          && level.isPresent()
          && sources.isFrom(atRest.name(), chamber.name())) {
        left += chamber.areaM2().getAsDouble() * (atRest.levelM() - level.getAsDouble());
      }
    }
    return left;
  }

  /**
   * What a basin gains as long as the pumps run, m³/s: what returns less what is drawn; negative if
   * it loses.
   */
  double gainM3PerS(PointName basin) {
    Homes homes = new Homes(plan);
    double gain = state.point(basin).outflowM3PerS();
    for (PointState point : state.points()) {
      boolean comesHome =
          point.point().isWayOut() && homes.of(point.point()).filter(basin::equals).isPresent();
      gain += comesHome ? Math.max(0, point.outflowM3PerS()) : 0;
    }
    return gain;
  }

  /** Whether as much returns to a basin as is drawn from it, but for a hundredth of all flow. */
  boolean isInBalance(PointName basin) {
    double largest =
        state.points().stream()
            .mapToDouble(point -> Math.abs(point.outflowM3PerS()))
            .max()
            .orElse(0);
    return Math.abs(gainM3PerS(basin)) <= LOST_SHARE * largest;
  }

  /** Wet surface besides the basins themselves of what came from a basin, m². */
  double wetAreaM2(PointName basin) {
    WaterSources sources = new WaterSources(state);
    double area = 0;
    for (StreamState stream : streams) {
      area += sources.isFrom(basin, stream.stream().from()) ? stream.wetAreaM2() : 0;
    }
    for (Map.Entry<PointName, FallBox> box : plan.boxes().entrySet()) {
      area += sources.isFrom(basin, box.getKey()) ? box.getValue().areaM2() : 0;
    }
    return area;
  }
}
