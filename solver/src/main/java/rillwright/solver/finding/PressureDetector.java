package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rillwright.solver.law.Gravity;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Point;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Tee;
import rillwright.solver.pumping.WaterWays;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.water.Water;

/**
 * Pressure pipe downstream of a pump that is not made for the pump's shut-off pressure and, where a
 * swing check valve closes, the surge of that.
 *
 * <p>Source: Joukowsky 1898, Δp = ρ a Δv, of a closing that takes longer than the wave's way there
 * and back less in the ratio of the two times (Michaud 1878); as in Wylie and Streeter, Fluid
 * Transients (all from memory).
 */
final class PressureDetector implements Detector {
  /** How long a swing check valve takes to close, s; common practice, no source. */
  private static final double CLOSES_IN_S = 0.5;

  /** A run under pressure: shut-off and surge, Pa. */
  private record Pressed(Line line, Run run, double shutOffPa, double surgePa) {
    double overPa(double celsius) {
      return shutOffPa + surgePa - ratedPa(celsius);
    }

    double ratedPa(double celsius) {
      return run.wall().orElseThrow().ratedPressureAt(celsius);
    }
  }

  @Override
  public List<Finding> findIn(SteadyState state) {
    Water water = state.network().water();
    double celsius = water.temperatureC();
    List<Finding> findings = new ArrayList<>();
    Map<LineName, Double> shutOffHeadM = shutOffHeadsM(state);
    for (Line line : state.network().lines()) {
      pressed(state, line, shutOffHeadM).stream()
          .filter(it -> it.overPa(celsius) > 0)
          .max((one, other) -> Double.compare(one.overPa(celsius), other.overPa(celsius)))
          .ifPresent(it -> findings.add(overRating(it, it.ratedPa(celsius))));
    }
    return findings;
  }

  /**
   * The rated runs of a line downstream of running pumps: in it, else on the way of the water
   * upstream of it.
   */
  private static List<Pressed> pressed(
      SteadyState state, Line line, Map<LineName, Double> shutOffHeadM) {
    List<Pressed> pressed = new ArrayList<>();
    OptionalDouble low = lowestM(state, line);
    for (Placed<Run> run : line.placed(Run.class)) {
      double own = shutOffM(line, run.index());
      OptionalDouble head =
          own > 0
              ? plus(state.point(line.from()).headM(), own)
              : Stream.ofNullable(shutOffHeadM.get(line.name()))
                  .mapToDouble(Double::doubleValue)
                  .findFirst();
      if (run.part().wall().isPresent() && head.isPresent() && low.isPresent()) {
        double above = head.getAsDouble() - low.getAsDouble();
        double weight = state.network().water().densityKgPerM3() * Gravity.STANDARD_M_PER_S2;
        pressed.add(
            new Pressed(line, run.part(), weight * above, surgePa(state, line, run.part())));
      }
    }
    return pressed;
  }

  /** Heads with the water held downstream of them, m, of the lines on the way of pumped water. */
  private static Map<LineName, Double> shutOffHeadsM(SteadyState state) {
    WaterWays ways = new WaterWays(state);
    Map<LineName, Double> heads = new HashMap<>();
    for (Line line : state.network().lines()) {
      double shutOff = shutOffM(line, line.parts().size());
      OptionalDouble head = plus(state.point(line.from()).headM(), shutOff);
      if (shutOff > 0 && head.isPresent()) {
        ways.linesAfter(line.name())
            .forEach(after -> heads.merge(after, head.getAsDouble(), Math::max));
      }
    }
    return heads;
  }

  private static OptionalDouble plus(OptionalDouble head, double moreM) {
    return head.isPresent() ? OptionalDouble.of(head.getAsDouble() + moreM) : head;
  }

  private static double shutOffM(Line line, int before) {
    return line.placed(Pump.class).stream()
        .filter(pump -> pump.index() < before)
        .mapToDouble(pump -> pump.part().set().publishedShutOffHeadM())
        .sum();
  }

  /** The lowest elevation that is known of a line, m. */
  private static OptionalDouble lowestM(SteadyState state, Line line) {
    return DoubleStream.concat(
            elevationM(state.network().point(line.from())).stream(),
            DoubleStream.concat(
                line.placed(Gauge.class).stream().mapToDouble(it -> it.part().elevationM()),
                line.placed(Pump.class).stream()
                    .flatMapToDouble(it -> it.part().inlet().elevationM().stream())))
        .min();
  }

  private static OptionalDouble elevationM(Point point) {
    if (point instanceof Chamber chamber) {
      return OptionalDouble.of(chamber.intakeM());
    }
    if (point instanceof Tee tee) {
      return tee.elevationM();
    }
    return point.heldHeadM();
  }

  private static double surgePa(SteadyState state, Line line, Run run) {
    Optional<CheckValve> swing =
        line.placed(CheckValve.class).stream()
            .map(Placed::part)
            .filter(CheckValve::swings)
            .findFirst();
    if (swing.isEmpty()) {
      return 0;
    }
    LineState now = state.line(line.name());
    Water water = state.network().water();
    double length = line.placed(Run.class).stream().mapToDouble(it -> it.part().lengthM()).sum();
    double wave = run.wall().orElseThrow().waveSpeedMPerS(run.inside(), water);
    double stopped = Math.abs(run.inside().velocityAt(now.flowM3PerS()));
    double thereAndBackS = 2 * length / wave;
    return water.densityKgPerM3() * wave * stopped * Math.min(1, thereAndBackS / CLOSES_IN_S);
  }

  private static Finding overRating(Pressed at, double ratedPa) {
    String name = at.line().name().value();
    Finding shut =
        Finding.of(
                Severity.PROBLEM,
                "over-pressure-rating",
                name,
                "Against a shut valve the pump puts ")
            .pressure("shutOffPressure", at.shutOffPa())
            .then(" on the " + at.run().label() + " of \"" + name + "\"");
    Finding surge =
        at.surgePa() == 0
            ? shut
            : shut.then(", and the swing check valve that closes may add ")
                .pressure("surge", at.surgePa())
                .then(" (closing in half a second, common practice)");
    return surge
        .then("; at the water's temperature that pipe is made for ")
        .pressure("rating", ratedPa)
        .then(
            ". Take pipe of a higher rating"
                + (at.surgePa() == 0 ? "" : ", a check valve that closes before the water turns,")
                + " or a pump of less head. A pipe that bursts can empty the pond.");
  }
}
