package rillwright.cli.report.stream;

import java.util.List;
import java.util.Optional;
import rillwright.cli.report.RunningFigures;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.stream.StreamBudget;
import rillwright.solver.stream.time.TimeCourse;

/**
 * Streams and levels of a project.
 *
 * @param title of the job, as written
 * @param units to show it in
 * @param changes to the file, as written on the command line
 * @param budget where the water is
 * @param running what it takes to run; empty in conditions
 * @param course start and stop in time, where it was asked for
 */
public record StreamAnswer(
    String title,
    ShownUnits units,
    List<String> changes,
    StreamBudget budget,
    Optional<RunningFigures> running,
    Optional<TimeCourse> course) {
  public StreamAnswer {
    changes = List.copyOf(changes);
  }
}
