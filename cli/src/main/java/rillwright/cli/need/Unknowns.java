package rillwright.cli.need;

import java.util.List;
import java.util.stream.Collectors;
import rillwright.cli.file.Project;
import rillwright.cli.file.UncertainQuantities;
import rillwright.cli.file.UncertainQuantities.Named;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.quantity.Quantity.Choice;
import rillwright.solver.study.uncertainty.posterior.PosteriorFinder;

/** Refuses projects in which nothing is uncertain, where that is what is asked about. */
public final class Unknowns {
  private static final String EXAMPLES =
      "for example \"run: 38 ft ± 4 ft\" (or \"38 ft +- 4 ft\"), \"roughness: 0.002 mm .. 0.02"
          + " mm\", \"clogged: 0 % .. 40 %\"";

  private Unknowns() {}

  /** Throws unless flows of a project can be more or less likely. */
  public static void requireForOdds(Project project) {
    if (project.network().waysOut().isEmpty()) {
      throw new InvalidInput(
          project.places().whole(), "there is no fall or outlet, so there is no flow to report");
    }
    UncertainQuantities quantities = new UncertainQuantities(project);
    if (quantities.inTheNetwork().isEmpty()) {
      throw nothingToBetOn(project, quantities.elsewhere());
    }
  }

  private static InvalidInput nothingToBetOn(Project project, List<Named> elsewhere) {
    if (elsewhere.isEmpty()) {
      return new InvalidInput(
          project.places().whole(),
          "every value in the network is exact here, so there is no chance to compute; write"
              + " uncertain values as a tolerance or a range, "
              + EXAMPLES);
    }
    String named =
        elsewhere.stream()
            .map(range -> range.address() + " (" + range.quantity().written().text() + ")")
            .collect(Collectors.joining(", "));
    return new InvalidInput(
        elsewhere.get(0).quantity().written().place(),
        "odds reports the chances of flows and does not vary "
            + named
            + ": it does not change what the falls get while the pond is kept at its level; write a"
            + " tolerance or a range in points,"
            + " lines, pumps or water, "
            + EXAMPLES);
  }

  /** Throws unless readings can say something of a project, in a choice of sizes that is small. */
  public static void requireForReadings(Project project) {
    List<Named> unknown = new UncertainQuantities(project).inTheNetwork();
    if (unknown.isEmpty()) {
      throw new InvalidInput(
          project.places().whole(),
          "every value in the network is exact here, so there is nothing to learn; write what is"
              + " not known as a tolerance or a range, for example \"run: 38 ft ± 4 ft\" (or \"38"
              + " ft +- 4 ft\"), \"roughness: 0.002 mm .. 0.3 mm\", \"clogged: 0 % .. 40 %\"");
    }
    long choices = 1;
    for (Named one : unknown) {
      if (one.quantity().quantity().spread() instanceof Choice choice) {
        choices *= choice.values().size();
        if (choices > PosteriorFinder.MOST_CHOICES) {
          throw new InvalidInput(
              one.quantity().written().place(),
              "with this the pipes of unknown size may be chosen in more than "
                  + PosteriorFinder.MOST_CHOICES
                  + " ways, each of which is worked out by itself; narrow the sizes");
        }
      }
    }
  }

  /** What is wrong where readings fit nothing that the file allows. */
  public static InvalidInput nothingFits(Project project) {
    return new InvalidInput(
        project.places().whole(),
        "nothing within the ranges of this file gives a reading where these were taken: look at"
            + " the ranges, and at where the readings were taken");
  }
}
