package rillwright.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.condition.ProjectConditions;

/**
 * Looks whether the conditions that a project names are right, while something else is done: a
 * short command would be noticeably longer if it waited.
 */
final class ConditionsCheck {
  private final FutureTask<Boolean> task;

  private ConditionsCheck(FutureTask<Boolean> task) {
    this.task = task;
  }

  /** Begins. */
  static ConditionsCheck start(Project project, Path file) {
    FutureTask<Boolean> task = new FutureTask<>(() -> areRight(project, file));
    if (project.tree().find("conditions").isPresent()) {
      Thread thread = new Thread(task, "conditions");
      thread.setDaemon(true);
      thread.start();
    } else {
      task.run();
    }
    return new ConditionsCheck(task);
  }

  private static boolean areRight(Project project, Path file) {
    return project.tree().find("conditions").isEmpty()
        || !ProjectConditions.of(project, ProjectReader.mappingBeside(file), List.of())
            .projects()
            .isEmpty();
  }

  /**
   * Waits for the answer.
   *
   * @throws rillwright.cli.file.fault.InvalidInput with all that is wrong with the conditions
   */
  void require() {
    try {
      task.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException wrong) {
        throw wrong;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
