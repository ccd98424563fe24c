package rillwright.cli.command.need;

import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.solver.pumping.Wishes;

/** The wishes of a project, for commands that size something for them. */
public final class Wished {
  private Wished() {}

  /**
   * Refuses a project in which nothing is wished, so that no pump can be sized.
   *
   * @throws InvalidInput saying how to write a wish
   */
  public static void require(Project project) {
    require(project, "no pump can be sized");
  }

  /**
   * Refuses a project in which nothing is wished.
   *
   * @param consequence what cannot be done then
   * @throws InvalidInput saying how to write a wish
   */
  public static void require(Project project, String consequence) {
    if (Wishes.of(project.network()).isEmpty()) {
      throw new InvalidInput(
          project.places().whole(),
          "no fall or outlet says what it wants, so "
              + consequence
              + "; write for example \"want: 3600 gph\" or \"want: 100 gph/in\" at each fall");
    }
  }
}
