package rillwright.cli.need;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.curves.wording.PlainText;
import rillwright.solver.pumping.PumpPlace;

/** Refuses projects in which a pump is still to be chosen, where that is of no use. */
public final class ChosenPumps {
  private ChosenPumps() {}

  /** Throws unless every pump is chosen, as it must be for anything to flow. */
  public static void require(Project project) {
    require(
        project,
        ", so nothing flows yet; \"rillwright duty\" finds the flow and head it must make, then"
            + " name a pump of the section \"pumps\" here");
  }

  /**
   * Throws unless every pump is chosen.
   *
   * @param remedy what that means and what would be right, after "its pump is still to be chosen"
   */
  public static void require(Project project, String remedy) {
    List<PumpPlace> planned = PumpPlace.listPlanned(project.network());
    if (!planned.isEmpty()) {
      PumpPlace place = planned.get(0);
      throw new InvalidInput(
          project.places().ofPart(place.line(), place.partIndex()),
          "line "
              + PlainText.quoted(place.line().value())
              + ": its pump is still to be chosen"
              + remedy);
    }
  }

  /**
   * Throws unless a project in a condition fits the choice of one pump: there is a target, the pump
   * stands where it is to be chosen, and all others are chosen.
   */
  public static void requireFor(Project project, PumpPlace place) {
    WithTargets.require(project);
    if (!PumpPlace.listPlanned(project.network()).contains(place)
        && !PumpPlace.listChosen(project.network()).contains(place)) {
      throw new InvalidInput(
          project.places().whole(),
          "it moves or removes the pump of line "
              + PlainText.quoted(place.line().value())
              + ", which is to be chosen; leave that pump in its place");
    }
    OtherPumps.requireChosen(project, place);
  }
}
