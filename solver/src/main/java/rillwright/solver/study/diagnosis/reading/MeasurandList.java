package rillwright.solver.study.diagnosis.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Tee;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.reading.ShutOff;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/** What a crew could read at a job. */
public final class MeasurandList {
  private static final When RUNNING = new When.Running();

  /** So many valves are shut for gauges: each is a state that every cause is balanced in. */
  public static final int MOST_VALVES_SHUT = 12;

  private final Network network;
  private final List<Measurand> list = new ArrayList<>();

  private MeasurandList(Network network) {
    this.network = network;
  }

  /**
   * All that could be read at a job as built: flow and depth at its falls, gauges and tees, gauges
   * with the valve shut (the first valves of many) and with the pump off, levels, power, and flow
   * by a meter clamped on or by a chamber's drawdown where either is plausible.
   */
  public static List<Measurand> of(AsBuilt job) {
    MeasurandList all = new MeasurandList(job.network());
    all.points();
    all.gauges();
    all.levelsAndPower();
    all.list.addAll(Looks.in(job.network()));
    all.largeFlows(new LargeFlows(job.state()));
    Map<When, Optional<Observed>> asBuilt = new HashMap<>();
    all.list.removeIf(readable -> !isThere(readable, job, asBuilt));
    return all.list;
  }

  /** How many valves of a network could be shut for a gauge. */
  public static int countValvesForGauges(Network network) {
    MeasurandList list = new MeasurandList(network);
    return (int)
        network.lines().stream()
            .filter(line -> line.has(Gauge.class))
            .flatMap(line -> list.valveFor(line).stream())
            .distinct()
            .count();
  }

  private static boolean isThere(
      Measurand readable, AsBuilt job, Map<When, Optional<Observed>> asBuilt) {
    return asBuilt
        .computeIfAbsent(
            readable.when(), when -> Observed.of(new Alteration(job.network(), job.facts()), when))
        .map(readable::valueIn)
        .orElse(OptionalDouble.empty())
        .isPresent();
  }

  private void points() {
    for (Point point : network.points()) {
      PointName name = point.name();
      if (point instanceof Fall) {
        list.add(new Measurands.Flow(name, RUNNING));
        list.add(new Measurands.CrestHead(name, RUNNING));
      } else if (point instanceof Outlet outlet && outlet.levelM().isEmpty()) {
        list.add(new Measurands.Flow(name, RUNNING));
      } else if (point instanceof Tee tee && tee.elevationM().isPresent()) {
        list.add(new Measurands.TeePressure(name, RUNNING));
      }
    }
  }

  private void gauges() {
    Set<LineName> shut = new HashSet<>();
    for (Line line : network.lines()) {
      for (Part part : line.parts()) {
        if (part instanceof Gauge gauge) {
          list.add(new Measurands.GaugePressure(gauge.name(), RUNNING));
          Optional<LineName> valve = valveFor(line);
          if (valve.isPresent() && (shut.contains(valve.get()) || shut.size() < MOST_VALVES_SHUT)) {
            shut.add(valve.get());
            list.add(new Measurands.GaugePressure(gauge.name(), new When.ValveShut(valve.get())));
          }
          list.add(new Measurands.GaugePressure(gauge.name(), new When.PumpOff()));
        }
      }
    }
  }

  /** The line whose last valve is shut for a gauge: its own, else the one that stops its pump. */
  private Optional<LineName> valveFor(Line line) {
    if (When.ValveShut.lastValve(line) >= 0) {
      return Optional.of(line.name());
    }
    return PumpPlace.listChosen(network).stream()
        .filter(place -> place.line().equals(line.name()))
        .flatMap(place -> ShutOff.of(network, place).stream())
        .filter(shutOff -> shutOff.shutIn().size() == 1)
        .map(shutOff -> shutOff.shutIn().get(0))
        .findFirst();
  }

  private void largeFlows(LargeFlows plausible) {
    network.lines().stream()
        .filter(plausible::metered)
        .forEach(line -> list.add(new LineFlow(line.name(), RUNNING)));
    network.points(Chamber.class).stream()
        .filter(plausible::drawnDown)
        .forEach(chamber -> list.add(new Drawdown(chamber.name(), RUNNING)));
  }

  private void levelsAndPower() {
    for (Point point : network.points()) {
      if (point instanceof Chamber || point instanceof Basin) {
        list.add(new Measurands.Level(point.name(), RUNNING));
      }
    }
    for (Line line : network.lines()) {
      if (line.has(Pump.class)) {
        list.add(new Measurands.Power(line.name(), RUNNING));
      }
    }
  }
}
