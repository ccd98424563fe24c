package rillwright.cli.need;

import rillwright.cli.file.Project;
import rillwright.cli.file.Show;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.quantity.MetricExamples;
import rillwright.solver.pumping.Targets;

/** The targets of a project, for commands that size something for them. */
public final class WithTargets {
  private WithTargets() {}

  /**
   * Refuses a project in which there is no target, so that no pump can be sized.
   *
   * @throws InvalidInput saying how to write a target
   */
  public static void require(Project project) {
    require(project, "no pump can be sized");
  }

  /**
   * Refuses a project in which there is no target.
   *
   * @param consequence what cannot be done then
   * @throws InvalidInput saying how to write a target
   */
  public static void require(Project project, String consequence) {
    if (Targets.of(project.network()).isEmpty()) {
      String message =
          "no fall or outlet has a target, so "
              + consequence
              + "; write for example \"target: 3600 gph\" or \"target: 100 gph/in\" at each fall";
      throw new InvalidInput(
          project.places().whole(),
          project.show() == Show.METRIC ? MetricExamples.in(message) : message);
    }
  }
}
