package rillwright.cli.study.compare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.compare.Measured.Kind;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Pump;
import rillwright.solver.reading.GaugeReading;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.PointState;

/** The figures of a solved project, by what they are and where. */
final class Measuring {
  private final Map<Kind, Map<String, OptionalDouble>> figures = new EnumMap<>(Kind.class);

  private Measuring(Solved solved) {
    solved.state().points().forEach(this::point);
    solved.state().lines().forEach(this::line);
    GaugeReading.listIn(solved.state())
        .forEach(it -> put(Kind.GAUGE_PRESSURE, it.gauge().name(), it.pressurePa()));
    RunningFigures takes = solved.takes();
    if (takes.pumps() > 0) {
      put(Kind.POWER, "", takes.powerW());
      put(Kind.ENERGY, "", takes.energyKwhPerYear());
      put(Kind.COST, "", takes.costPerYear());
    }
  }

  /** Each figure of either, kind by kind. */
  static List<Measured> listBetween(Solved a, Solved b) {
    Measuring first = new Measuring(a);
    Measuring second = new Measuring(b);
    List<Measured> measured = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      Set<String> places = new LinkedHashSet<>(first.of(kind).keySet());
      places.addAll(second.of(kind).keySet());
      for (String at : places) {
        measured.add(new Measured(at, kind, first.of(kind, at), second.of(kind, at)));
      }
    }
    return measured.stream().filter(it -> it.a().isPresent() || it.b().isPresent()).toList();
  }

  private void point(PointState state) {
    String name = state.point().name().value();
    if (state.point() instanceof Fall fall) {
      put(Kind.FLOW_OUT, name, OptionalDouble.of(state.outflowM3PerS()));
      double head = fall.weir().headAt(state.outflowM3PerS());
      put(Kind.CREST_HEAD, name, OptionalDouble.of(head));
    } else if (state.point() instanceof Outlet) {
      put(Kind.FLOW_OUT, name, OptionalDouble.of(state.outflowM3PerS()));
    } else if (state.point() instanceof Basin || state.point() instanceof Chamber) {
      put(Kind.LEVEL, name, state.headM());
    }
  }

  private void line(LineState line) {
    String name = line.line().name().value();
    put(Kind.LINE_FLOW, name, OptionalDouble.of(line.flowM3PerS()));
    put(Kind.LINE_SPEED, name, line.velocityMPerS());
    int pumps = 0;
    for (PartState part : line.parts()) {
      if (part.part() instanceof Pump pump) {
        pumps++;
        String at = pumps == 1 ? name : name + ", pump " + pumps;
        put(Kind.PUMP_FLOW, at, OptionalDouble.of(part.flowM3PerS()));
        put(Kind.PUMP_HEAD, at, OptionalDouble.of(pump.set().headAt(part.flowM3PerS())));
        put(Kind.PUMP_POWER, at, pump.set().powerAt(part.flowM3PerS()));
      }
    }
  }

  private void put(Kind kind, String at, OptionalDouble value) {
    figures.computeIfAbsent(kind, it -> new LinkedHashMap<>()).put(at, value);
  }

  private Map<String, OptionalDouble> of(Kind kind) {
    return figures.getOrDefault(kind, Map.of());
  }

  private OptionalDouble of(Kind kind, String at) {
    return of(kind).getOrDefault(at, OptionalDouble.empty());
  }
}
