package rillwright.cli.report.json;

import java.util.OptionalDouble;
import rillwright.solver.network.LineName;
import rillwright.solver.study.pipechoice.LineFigures;
import rillwright.solver.study.pipechoice.SizedPipe;

/** What is told about sizes of pipe, pumped or not. */
final class SizesFields {
  private final Json json;

  SizesFields(Json json) {
    this.json = json;
  }

  /** The size of each line, by its name. */
  void names(SizedPipe pipe) {
    pipe.option().sizes().forEach((line, size) -> json.words(line.value(), size.name()));
  }

  /** {@code lines} and {@code holdUpM3}. */
  void lines(SizedPipe pipe) {
    json.object(
        "lines",
        () -> {
          for (LineName line : pipe.option().sizes().keySet()) {
            json.object(line.value(), () -> figures(pipe.figures(line)));
          }
        });
    json.number("holdUpM3", pipe.holdUpM3());
  }

  private void figures(LineFigures figures) {
    json.number("velocityMPerS", figures.velocityMPerS());
    json.number("frictionMPerM", figures.frictionMPerM());
    json.number("holdUpM3", figures.holdUpM3());
  }

  /** {@code paybackYears} and {@code samePump} where no payback is asked. */
  void noPayback() {
    json.number("paybackYears", OptionalDouble.empty());
    json.truth("samePump", false);
  }
}
