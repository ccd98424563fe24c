package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import rillwright.solver.law.Gravity;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Line;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Point;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Tee;
import rillwright.solver.pumping.ShutOffHeads;
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
    ShutOffHeads shutOff = ShutOffHeads.of(state);
    for (Line line : state.network().lines()) {
      pressed(state, line, shutOff).stream()
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
  private static List<Pressed> pressed(SteadyState state, Line line, ShutOffHeads shutOff) {
    List<Pressed> pressed = new ArrayList<>();
    OptionalDouble low = lowestM(state, line);
    for (Placed<Run> run : line.placed(Run.class)) {
      OptionalDouble head = shutOff.headM(line, run.index());
      if (run.part().wall().isPresent() && head.isPresent() && low.isPresent()) {
        double above = head.getAsDouble() - low.getAsDouble();
        double weight = state.network().water().densityKgPerM3() * Gravity.STANDARD_M_PER_S2;
        pressed.add(
            new Pressed(line, run.part(), weight * above, surgePa(state, line, run.part())));
      }
    }
    return pressed;
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
