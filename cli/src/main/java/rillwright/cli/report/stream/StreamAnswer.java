package rillwright.cli.report.stream;

import java.util.List;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.stream.StreamBudget;

/**
 * Streams and levels of a project.
 *
 * @param title of the job, as written
 * @param units to show it in
 * @param changes to the file, as written on the command line
 * @param budget where the water is
 */
public record StreamAnswer(
    String title, ShownUnits units, List<String> changes, StreamBudget budget) {
  public StreamAnswer {
    changes = List.copyOf(changes);
  }
}
