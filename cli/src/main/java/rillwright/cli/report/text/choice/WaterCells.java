package rillwright.cli.report.text.choice;

import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.study.pipechoice.LineFigures;
import rillwright.solver.study.pipechoice.SizedPipe;

/** What sizes of pipe mean for the water in them day by day: of several lines, the most. */
final class WaterCells {
  private static final String UNKNOWN = "-";

  private final ShownUnits units;

  WaterCells(ShownUnits units) {
    this.units = units;
  }

  static String speedTitle(SizedPipe pipe) {
    return pipe.option().sizes().size() > 1 ? "fastest" : "speed";
  }

  String speed(SizedPipe pipe) {
    OptionalDouble most = most(pipe, LineFigures::velocityMPerS);
    return most.isPresent() ? units.velocity(most.getAsDouble()) : UNKNOWN;
  }

  String friction(SizedPipe pipe) {
    OptionalDouble most = most(pipe, LineFigures::frictionMPerM);
    return most.isPresent() ? units.frictionOverLength(most.getAsDouble()) : UNKNOWN;
  }

  private static OptionalDouble most(SizedPipe pipe, Function<LineFigures, OptionalDouble> figure) {
    return pipe.option().sizes().keySet().stream()
        .map(line -> figure.apply(pipe.figuresInUse(line)))
        .flatMapToDouble(OptionalDouble::stream)
        .max();
  }
}
