package rillwright.solver.stream.time;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.stream.DrainingPipes;
import rillwright.solver.stream.Homes;
import rillwright.solver.stream.RunningWater;
import rillwright.solver.stream.StreamState;
import rillwright.solver.stream.WaterSources;

/** The water of a plan as stores with levels, and the flows between them at every moment. */
final class WaterCircuit {
  private final List<Store> stores = new ArrayList<>();
  private final List<Double> initial = new ArrayList<>();
  private final Map<PointName, Integer> held = new LinkedHashMap<>();

  /** No flow over each fall and out of each outlet. */
  private final Map<PointName, Double> dry = new LinkedHashMap<>();

  private final StreamStores streams = new StreamStores();
  private final Soaking soaking = new Soaking();
  private final PipeDrains drains = new PipeDrains();
  private final Brims brims;
  private final Intakes intakes;
  private final LevelWaters levelWaters;
  private final Network network;
  private final Homes homes;
  private final RunningWater water;
  private final int elsewhere;
  private final List<PipeFlows> running;
  private final List<PipeFlows> stopped;
  private long asked;

  /** What the pumps do. */
  enum Phase {
    RUNNING,
    STOPPED
  }

  /**
   * The circuit of a plan at rest.
   *
   * @param steady the plan running, from which it takes where water comes from
   */
  WaterCircuit(RunningWater steady) {
    this.water = steady;
    this.network = steady.plan().network();
    this.homes = new Homes(steady.plan());
    this.intakes = new Intakes(network);
    this.brims = new Brims(add(Tank.upright(1, 0), 0));
    for (Point point : network.points()) {
      addHeld(point);
      if (point.isWayOut()) {
        dry.put(point.name(), 0.0);
      }
    }
    this.levelWaters = new LevelWaters(network, held);
    this.elsewhere = add(Tank.upright(1, 0), 0);
    steady.streams().forEach(this::addStream);
    Network off = PipeDrains.off(network);
    this.running = PipeFlows.listOf(network, held.keySet());
    this.stopped = PipeFlows.listOf(off, held.keySet());
    WaterSources sources = new WaterSources(steady.state());
    network.lines().forEach(line -> addFilters(line, sources));
    DrainingPipes.listIn(network).forEach(pipes -> addDrain(pipes, off));
  }

  private int add(Store store, double levelM) {
    stores.add(store);
    initial.add(levelM);
    return stores.size() - 1;
  }

  private void addHeld(Point point) {
    if (point instanceof Basin basin) {
      BasinShape shape = basin.shape().orElseThrow();
      int store = add(new Tank(shape), basin.levelM());
      held.put(basin.name(), store);
      water.plan().overflowM(basin).ifPresent(brim -> brims.add(store, brim));
    } else if (point instanceof Chamber chamber && chamber.areaM2().isPresent()) {
      Tank tank = Tank.upright(chamber.areaM2().getAsDouble(), chamber.floorM());
      int store = add(tank, atRestM(chamber));
      held.put(chamber.name(), store);
      chamber.topM().ifPresent(top -> brims.add(store, top));
    } else if (point instanceof Fall fall && water.plan().boxes().containsKey(fall.name())) {
      Tank tank = Tank.upright(water.plan().boxes().get(fall.name()).areaM2(), fall.crestM());
      held.put(fall.name(), add(tank, fall.crestM()));
    }
  }

  /** A chamber at rest stands as high as the basin that feeds it. */
  private double atRestM(Chamber chamber) {
    return new WaterSources(water.state())
        .of(chamber.name())
        .map(name -> ((Basin) network.point(name)).levelM())
        .orElse(chamber.intakeM());
  }

  private void addStream(StreamState state) {
    StreamWay way = StreamWay.of(state);
    int first = stores.size();
    streams.add(state.stream().from(), way, first);
    way.links().forEach(link -> add(link.store(), link.emptyM()));
    for (int i = 0; i < way.links().size(); i++) {
      double gravel = way.links().get(i).gravelM3();
      if (gravel > 0) {
        int store = add(Tank.upright(gravel, 0), 0);
        soaking.addGravel(first + i, store, gravel, way.links().get(i).soakedM());
      }
    }
  }

  private void addFilters(Line line, WaterSources sources) {
    double holds = line.filtersHoldM3();
    Optional<PointName> source =
        held.containsKey(line.from()) ? Optional.of(line.from()) : sources.of(line.from());
    if (holds > 0 && source.isPresent() && water.state().line(line.name()).flowM3PerS() != 0) {
      soaking.addFilter(held.get(source.get()), add(Tank.upright(holds, 0), 0), holds);
    }
  }

  private void addDrain(DrainingPipes pipes, Network off) {
    Line line = pipes.pumpLine();
    if (!held.containsKey(line.from())) {
      return;
    }
    WaterSources sources = new WaterSources(water.state());
    double empty =
        sources
            .of(line.from())
            .map(name -> ((Basin) network.point(name)).levelM())
            .orElse(initial.get(held.get(line.from())));
    Front front = new Front(pipes.shapeAbove(empty));
    if (front.volumeM3() > 0) {
      int store = add(Tank.upright(front.volumeM3(), 0), 0);
      drains.add(pipes, held.get(line.from()), store, front, network, off);
    }
  }

  /**
   * The work so far, about a microsecond each: 100 and a tenth for each store to ask for all rates
   * once, 6 for each Newton step of the balances in it and each line.
   */
  double work() {
    return asked * (100 + 0.1 * stores.size())
        + 6.0 * (PipeFlows.stepsOf(running) + PipeFlows.stepsOf(stopped));
  }

  /** The basin, chamber or box with the least surface: its level is the fastest. */
  PointName smallestWater(double[] levels) {
    return Collections.min(
        held.keySet(),
        Comparator.comparingDouble(
            name -> stores.get(held.get(name)).areaM2(levels[held.get(name)])));
  }

  /** Pipes that are still filling at these levels. */
  Set<Integer> filling(double[] levels, Phase phase) {
    return drains.filling(levels, phase);
  }

  /** How far the nearest of some filling pipes is from full, a share; below 0 when full. */
  double room(double[] levels, Set<Integer> filling) {
    return drains.room(levels, filling);
  }

  /** Levels before the start. */
  double[] levelsAtRest() {
    return initial.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** The stores whose level is one of open water: basins, chambers, boxes. */
  Collection<Integer> waterLevels() {
    return held.values();
  }

  /** All water, from the levels by geometry, m³. */
  double volumeM3(double[] levels) {
    double sum = 0;
    for (int i = 0; i < levels.length; i++) {
      sum += stores.get(i).volumeM3(levels[i]);
    }
    return sum;
  }

  /** Water that overflowed from ponds and chambers so far, m³. */
  double ranOverM3(double[] levels) {
    return stores.get(brims.gathered()).volumeM3(levels[brims.gathered()]);
  }

  /** Levels of basins and chambers. */
  Map<PointName, Double> levelsM(double[] levels) {
    Map<PointName, Double> byName = new LinkedHashMap<>();
    held.forEach(
        (name, index) -> {
          if (!(network.point(name) instanceof Fall)) {
            byName.put(name, levels[index]);
          }
        });
    return byName;
  }

  /**
   * Flow over each fall and out of each outlet, dry ones too, m³/s; what rates come of it besides.
   */
  Map<PointName, Double> rates(double[] levels, double[] rates, Phase phase, Set<Integer> filling) {
    asked++;
    Arrays.fill(rates, 0);
    Map<PointName, Double> levelM = new LinkedHashMap<>();
    held.forEach((name, index) -> levelM.put(name, levels[index]));
    Map<PointName, Double> over = new LinkedHashMap<>(dry);
    List<Map<PointName, Double>> gains =
        (phase == Phase.RUNNING ? running : stopped)
            .stream()
                .filter(flows -> !drains.takeOver(flows, phase, filling))
                .map(flows -> flows.gains(levelM))
                .toList();
    double[] shares = intakes.shares(gains, levelM);
    for (int i = 0; i < shares.length; i++) {
      double share = shares[i];
      gains.get(i).forEach((name, gain) -> gain(name, share * gain, rates, over));
    }
    drains.move(levels, rates, phase, filling);
    boxes(levels, rates, over);
    streams.move(levels, rates, this::homeOf);
    soaking.move(levels, rates, phase);
    brims.move(levels, rates);
    double[] areaM2 = new double[rates.length];
    Arrays.setAll(areaM2, i -> stores.get(i).areaM2(levels[i]));
    if (phase == Phase.STOPPED) {
      levelWaters.share(levels, rates, areaM2);
    }
    Arrays.setAll(rates, i -> rates[i] / areaM2[i]);
    return over;
  }

  private void gain(PointName name, double gain, double[] net, Map<PointName, Double> over) {
    Point point = network.point(name);
    if (held.containsKey(name)) {
      net[held.get(name)] += gain;
    } else if (point.isWayOut()) {
      over.merge(name, gain, Double::sum);
      net[gain > 0 ? entryOf(name) : elsewhere] += gain;
    } else {
      net[elsewhere] += gain; // drawn from the network
    }
  }

  /** Where water over a fall goes first: into its stream, or home. */
  private int entryOf(PointName fall) {
    return streams.entryFrom(fall).orElseGet(() -> homeOf(fall));
  }

  private int homeOf(PointName fall) {
    return homes.of(network.point(fall)).map(held::get).orElse(elsewhere);
  }

  private void boxes(double[] levels, double[] net, Map<PointName, Double> over) {
    for (Point point : network.points()) {
      Integer box = held.get(point.name());
      if (point instanceof Fall fall && box != null) {
        double flow = fall.weir().flowAt(Math.max(0, levels[box] - fall.crestM()));
        net[box] -= flow;
        net[entryOf(fall.name())] += flow;
        over.put(fall.name(), flow);
      }
    }
  }

  /** Whether some stream lets on less, or more, at its end than at its beginning. */
  boolean isFillingStreams(double[] levels) {
    return streams.areFilling(levels);
  }

  /** What each stream brings home at these levels, m³/s. */
  Map<String, Double> returnFlowM3PerS(double[] levels) {
    return streams.returnFlowM3PerS(levels);
  }

  /** Head over the crest of each pool, m. */
  Map<String, Double> poolHeadsM(double[] levels) {
    return streams.poolHeadsM(levels);
  }
}
