package rillwright.cli.need;

import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.study.choice.SizeWithoutEffect;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.pumping.PumpPlace;

/** Whether sizes of pipe can be tried in a project. */
public final class SizesJob {
  private SizesJob() {}

  /**
   * Throws unless the pump that is there runs, as it must where no others are tried.
   *
   * @param others how others are tried, for people
   */
  public static void requireRunning(Project project, PumpPlace place, String others) {
    Part part = project.network().line(place.line()).parts().get(place.partIndex());
    if (!(part instanceof Pump pump && pump.set().speed() > 0)) {
      throw new InvalidInput(
          project.places().ofPart(place.line(), place.partIndex()),
          "line "
              + PlainText.quoted(place.line().value())
              + ": its pump is still to be chosen or is stopped; name one, or "
              + others
              + " to choose pump and pipe together");
    }
  }

  /** What is wrong where a size changes nothing. */
  public static InvalidInput withoutEffect(Project project, SizeWithoutEffect none) {
    return new InvalidInput(
        project.places().ofLine(none.line()),
        "line "
            + PlainText.quoted(none.line().value())
            + ": its pipe size changes nothing, because its runs name sizes of their own; remove"
            + " those");
  }
}
