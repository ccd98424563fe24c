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
   * @param project as it is read
   * @param progress receives how far a long study has come, and may stop it
   * @throws rillwright.solver.steady.NoBalance if the project has no balanced state
   * @throws rillwright.solver.progress.Stopped if it was stopped
   * @throws IllegalArgumentException if the request does not fit the project: another pump is still
   *     to be chosen, or there is no target where something is sized for a target
   */
  A answer(Project project, Progress progress);

  /** The answer, unwatched. */
  default A answer(Project project) {
    return answer(project, Progress.UNSEEN);
  }
}
