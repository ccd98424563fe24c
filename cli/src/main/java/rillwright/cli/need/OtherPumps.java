package rillwright.cli.need;

import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.curves.wording.PlainText;
import rillwright.solver.pumping.PumpPlace;

/** The pumps that a command is not about: they must be known. */
public final class OtherPumps {
  private OtherPumps() {}

  /**
   * Refuses a project in which another pump than the one meant is still to be chosen.
   *
   * @throws InvalidInput pointing there
   */
  public static void requireChosen(Project project, PumpPlace meant) {
    for (PumpPlace place : PumpPlace.listPlanned(project.network())) {
      if (!place.equals(meant)) {
        throw new InvalidInput(
            project.places().ofPart(place.line(), place.partIndex()),
            "line "
                + PlainText.quoted(place.line().value())
                + ": its pump is also to be chosen; choose it first, or shut its line");
      }
    }
  }
}
