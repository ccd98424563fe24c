package rillwright.cli.study;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.file.Show;
import rillwright.cli.file.site.Running;

/**
 * The job that an answer is about.
 *
 * @param title as written
 * @param show units to tell it in
 * @param running how long its pumps run and what electricity costs
 * @param changes that were made to its file, as written
 * @param ranges how many of its values are ranges, computed with at their middles
 * @param streams whether a stream takes water back to a pond
 */
public record Job(
    String title, Show show, Running running, List<String> changes, int ranges, boolean streams) {
  public Job {
    changes = List.copyOf(changes);
  }

  /** The job of a project. */
  public static Job of(Project project) {
    return new Job(
        project.title(),
        project.show(),
        project.running(),
        project.changes(),
        project.uncertain().size(),
        !project.streams().streams().isEmpty());
  }
}
