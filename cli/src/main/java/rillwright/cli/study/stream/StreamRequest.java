package rillwright.cli.study.stream;

import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.study.Job;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.cli.study.RunningFigures;
import rillwright.solver.progress.Progress;
import rillwright.solver.stream.StreamBudget;
import rillwright.solver.stream.StreamBudgetFinder;
import rillwright.solver.stream.time.StartAndStop;

/**
 * How the stream runs, and how it changes the pond's level.
 *
 * @param follow whether start and stop are followed in time: every basin needs a shape for that;
 *     where waters are too small to be followed to the end the course says so
 */
public record StreamRequest(Follow follow) implements Request<StreamAnswer> {
  /** Whether start and stop are followed in time. */
  public enum Follow {
    /** Levels at rest, running and stopped. */
    NO,
    /** All between them too. */
    START_AND_STOP
  }

  @Override
  public StreamAnswer answer(Project project, Progress progress) {
    PumpsChosen.require(project.network());
    StreamBudget budget = StreamBudgetFinder.find(project.streams());
    return new StreamAnswer(
        Job.of(project),
        budget,
        RunningFigures.of(budget.running().state(), project.running()),
        follow == Follow.NO
            ? Optional.empty()
            : Optional.of(StartAndStop.of(budget.running(), progress)));
  }
}
