package rillwright.cli.interview;

import java.nio.file.Path;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.fault.InvalidInput;

/**
 * A project as it stands in the answers.
 *
 * @param text of the file
 * @param file where it is to be written; data sheets are found relative to its folder
 */
public record Draft(String text, Path file) {
  /** The project of some answers; questions without one have what they suggest. */
  public static Draft of(Answers answers, Path file) {
    return new Draft(new ProjectText(answers).text(), file);
  }

  /** The project of some answers with its pump to be chosen. */
  static Draft withoutPump(Answers answers) {
    return of(answers.with(Questions.PUMP, PumpAnswer.NONE_YET), Path.of("project.yaml"));
  }

  /**
   * What the readers of project files make of it.
   *
   * @throws InvalidInput with all that is wrong with it
   */
  public Project project() {
    return ProjectReader.of(text, file);
  }
}
