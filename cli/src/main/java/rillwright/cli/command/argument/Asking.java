package rillwright.cli.command.argument;

import rillwright.cli.command.output.NoAnswer;
import rillwright.cli.file.Project;
import rillwright.cli.report.NoBalanceWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.Request;
import rillwright.solver.progress.Progress;
import rillwright.solver.steady.NoBalance;

/** Asks studies for commands. */
public final class Asking {
  private Asking() {}

  /**
   * The answer to a request.
   *
   * @throws NoAnswer if the project has no balanced state, said in its units
   */
  public static <A> A ask(Request<A> request, Project project, Progress progress) {
    try {
      return request.answer(project, progress);
    } catch (NoBalance none) {
      throw new NoAnswer(NoBalanceWords.of(none.reason(), Shown.of(project.show())));
    }
  }
}
