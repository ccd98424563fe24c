package rillwright.cli.study;

import rillwright.cli.file.Project;
import rillwright.solver.progress.Progress;

/**
 * What is asked of a project. A request says all that the answer depends on besides the project:
 * the same two give the same answer, but for the time that it took.
 *
 * @param <A> what is answered
 */
public interface Request<A> {
  /**
   * The answer.
   *
   * @param project as it is read, with every pump chosen that the request does not ask for
   * @param progress is told how far a long study has come, and may stop it
   * @throws rillwright.solver.steady.NoBalance if the project has no balanced state
   * @throws rillwright.solver.progress.Stopped if it was stopped
   * @throws IllegalArgumentException if the request does not fit the project: nothing is wished
   *     where something is sized for a wish, a place is named that the project does not have
   */
  A answer(Project project, Progress progress);

  /** The answer, unwatched. */
  default A answer(Project project) {
    return answer(project, Progress.UNSEEN);
  }
}
