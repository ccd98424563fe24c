package rillwright.cli.command;

import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.solver.pumping.Wishes;

/** The wishes of a project, for commands that size something for them. */
final class Wished {
  private Wished() {}

  /**
   * Refuses a project in which nothing is wished.
   *
   * @throws InvalidInput saying how to write a wish
   */
  static void require(Project project) {
    if (Wishes.of(project.network()).isEmpty()) {
      throw new InvalidInput(
          project.places().whole(),
          "no fall or outlet says what it wants, so no pump can be sized; write for example \"want:"
              + " 3600 gph\" or \"want: 100 gph/in\" at each fall");
    }
  }
}
