package rillwright.cli.report.text.choice;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.cli.report.choice.SizeWords;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.study.pipechoice.LineFigures;
import rillwright.solver.study.pipechoice.SizedPipe;

/**
 * What sizes of pipe mean for the water in them: speed and friction day by day, of several lines
 * the most, what the pipe holds, and what is found.
 */
final class WaterTable {
  private static final String UNKNOWN = "none";

  private final ShownUnits units;

  private WaterTable(ShownUnits units) {
    this.units = units;
  }

  /**
   * The table.
   *
   * @param pipes a row each; at least one
   */
  static TableBuilder of(List<? extends SizedPipe> pipes, SizeWords sizes, ShownUnits units) {
    WaterTable cells = new WaterTable(units);
    TableBuilder table =
        new TableBuilder("WATER")
            .column(speedTitle(pipes.get(0)), Side.RIGHT)
            .column("loss per " + units.frictionLength(), Side.RIGHT)
            .column("holds", Side.RIGHT)
            .column("warnings", Side.LEFT);
    for (SizedPipe pipe : pipes) {
      table.row(
          sizes.cell(pipe.option()),
          cells.speed(pipe),
          cells.friction(pipe),
          units.volume(pipe.holdUpM3()),
          FindingCell.of(pipe.findings(), pipe.option().sizes().keySet()));
    }
    return table;
  }

  private static String speedTitle(SizedPipe pipe) {
    return pipe.option().sizes().size() > 1 ? "fastest" : "speed";
  }

  private String speed(SizedPipe pipe) {
    OptionalDouble most = most(pipe, LineFigures::velocityMPerS);
    return most.isPresent() ? units.velocity(most.getAsDouble()) : UNKNOWN;
  }

  private String friction(SizedPipe pipe) {
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
