package rillwright.cli.report.picture.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.section.Section;
import rillwright.cli.study.section.Station;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;
import rillwright.solver.network.Valve;
import rillwright.solver.reading.GaugeReading;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.PointState;
import rillwright.solver.stream.ItemState;
import rillwright.solver.stream.Reach;
import rillwright.solver.water.Water;

/** What is written below a place: its name and the figures that arise there. */
final class SectionFigures {
  /** A head below this, m, is written as depths are. */
  private final Section section;

  private final ShownUnits units;

  SectionFigures(Section section, ShownUnits units) {
    this.section = section;
    this.units = units;
  }

  /** Its name, or what it is. */
  String name(Station station) {
    if (station.subject() instanceof Station.AtPoint at) {
      return at.point().name().value();
    } else if (station.subject() instanceof Station.InLine in) {
      if (in.part() instanceof Gauge gauge) {
        return gauge.name();
      } else if (in.part() instanceof Run run) {
        return run.label().isEmpty() ? "pipe" : run.label();
      }
      return in.part().label();
    }
    return station.kind().orElse("");
  }

  /** One name for fittings that follow each other: alike ones are counted together. */
  String nameOf(List<Station> stations) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Station station : stations) {
      Fitting fitting = (Fitting) ((Station.InLine) station.subject()).part();
      counts.merge(fitting.label(), fitting.count(), Integer::sum);
    }
    return counts.entrySet().stream()
        .map(it -> it.getValue() == 1 ? it.getKey() : it.getValue() + " × " + it.getKey())
        .collect(Collectors.joining(", "));
  }

  /** The head that all of them take. */
  List<String> takenBy(List<Station> fittings) {
    OptionalDouble before = fittings.get(0).before().headM();
    OptionalDouble after = fittings.get(fittings.size() - 1).after().headM();
    return takes(before, after);
  }

  private List<String> takes(OptionalDouble before, OptionalDouble after) {
    if (before.isEmpty() || after.isEmpty()) {
      return List.of();
    }
    double head = before.getAsDouble() - after.getAsDouble();
    String words = units.head(head);
    return words.startsWith("0 ") ? List.of() : List.of("loses " + words);
  }

  /** Line by line. */
  List<String> of(Station station) {
    if (station.subject() instanceof Station.AtPoint at) {
      return of(at.point());
    } else if (station.subject() instanceof Station.InLine in) {
      return part(station, in);
    } else if (station.subject() instanceof Station.InStream in) {
      return stream(in);
    }
    return List.of();
  }

  /** The figures of a point. */
  List<String> of(Point point) {
    List<String> lines = new ArrayList<>();
    Optional<PointState> running = section.state().map(state -> state.point(point.name()));
    if (point instanceof Fall fall) {
      lines.add("crest " + units.level(fall.crestM()));
      running.ifPresent(state -> sheet(lines, fall, state.outflowM3PerS()));
    } else if (point instanceof Tee tee) {
      running
          .map(state -> tee.pressurePa(state.headM(), section.network().water()))
          .ifPresent(pressure -> pressure.ifPresent(it -> lines.add(units.pressure(it))));
      running.ifPresent(state -> head(lines, state.headM()));
    } else if (point.isWayOut()) {
      lines.add("at " + units.level(point.heldHeadM().orElse(end(point))));
      running.ifPresent(state -> lines.add(units.flow(state.outflowM3PerS())));
    } else {
      OptionalDouble level =
          running
              .map(PointState::headM)
              .filter(OptionalDouble::isPresent)
              .orElse(point.heldHeadM());
      level.ifPresent(it -> lines.add("level " + units.level(it)));
      if (running.filter(PointState::isStarved).isPresent()) {
        lines.add("runs dry");
      }
    }
    return lines;
  }

  private static double end(Point point) {
    return ((Outlet) point).elevationM();
  }

  private void sheet(List<String> lines, Fall fall, double flowM3PerS) {
    lines.add(flowM3PerS > 0 ? units.flow(flowM3PerS) : "dry");
    if (flowM3PerS > 0) {
      String band = " ±" + units.share(fall.depthBand());
      lines.add(units.tools().ruler().with(fall.weir().headAt(flowM3PerS)) + band);
      lines.add("over the crest");
    }
  }

  private void head(List<String> lines, OptionalDouble headM) {
    headM.ifPresent(head -> lines.add("head " + units.head(head)));
  }

  private List<String> part(Station station, Station.InLine in) {
    List<String> lines = new ArrayList<>();
    Optional<LineState> line = section.state().map(state -> state.line(in.line()));
    Part part = in.part();
    if (part instanceof Run run) {
      lines.add(units.length(run.lengthM()) + " long");
      line.ifPresent(state -> flow(lines, run.inside(), state.flowM3PerS()));
    } else if (part instanceof Skimmer skimmer) {
      lines.add("sill " + units.level(skimmer.sillM()));
      line.ifPresent(state -> lines.add(units.flow(Math.abs(state.flowM3PerS()))));
    } else if (part instanceof HighPoint high) {
      lines.add("at " + units.level(high.elevationM()));
    } else if (part instanceof Valve valve && valve.isShut()) {
      lines.add("shut");
    }
    line.map(state -> state.parts().get(in.index()))
        .ifPresent(state -> running(lines, station, state));
    return lines;
  }

  /** What a pipe is under against a shut valve, and what it is made for. */
  List<String> ofShutOff(Station station) {
    List<String> lines = new ArrayList<>();
    Water water = section.network().water();
    if (station.subject() instanceof Station.InLine in && in.part() instanceof Run) {
      station
          .shutOffPressurePa(water)
          .ifPresent(pressure -> lines.add("shut-off " + units.pressure(pressure)));
      station
          .ratedPressurePa(water)
          .ifPresent(pressure -> lines.add("made for " + units.pressure(pressure)));
    }
    return lines;
  }

  private void flow(List<String> lines, Bore bore, double flowM3PerS) {
    lines.add(units.flow(Math.abs(flowM3PerS)));
    if (flowM3PerS != 0) {
      lines.add(units.velocity(Math.abs(bore.velocityAt(flowM3PerS))));
    }
  }

  private void running(List<String> lines, Station station, PartState state) {
    if (state.part() instanceof Pump pump) {
      double flow = state.flowM3PerS();
      lines.add(units.flow(Math.max(0, flow)));
      lines.add("adds " + units.head(pump.set().headAt(flow)));
      pump.set().powerAt(flow).ifPresent(watts -> lines.add(units.power(watts)));
    } else if (state.part() instanceof Gauge gauge) {
      GaugeReading.pressurePa(gauge, state, section.network().water())
          .ifPresent(pressure -> lines.add(units.pressure(pressure)));
    } else if (state.part() instanceof HighPoint) {
      pressure(lines, station);
    } else if (state.flowM3PerS() != 0) {
      lines.addAll(takes(station.before().headM(), station.after().headM()));
    }
  }

  private void pressure(List<String> lines, Station station) {
    station
        .before()
        .pressurePa(section.network().water())
        .ifPresent(pressure -> lines.add(units.pressure(pressure)));
  }

  private List<String> stream(Station.InStream in) {
    List<String> lines = new ArrayList<>();
    if (in.item() instanceof Reach reach) {
      lines.add(units.length(reach.lengthM()) + " long");
    }
    if (in.item().dropM() > 0) {
      lines.add("drops " + units.length(in.item().dropM()));
    }
    in.running().filter(state -> state.flowM3PerS() > 0).ifPresent(state -> water(lines, state));
    return lines;
  }

  private void water(List<String> lines, ItemState state) {
    double depth = state.crestHeadM().orElse(state.depthM());
    if (state.crestHeadM().isPresent()) {
      lines.add(units.depth(depth));
      lines.add("over its crest");
    } else {
      lines.add(units.depth(depth) + " deep");
    }
    state.velocityMPerS().ifPresent(velocity -> lines.add(units.velocity(velocity)));
  }
}
