package rillwright.cli.command;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.LineName;
import rillwright.solver.pumping.PumpPlace;

/** Which pump a command is about. */
final class PumpArguments {
  @Option(
      names = "--line",
      paramLabel = "NAME",
      description = "The line of the pump that is meant, where there are several.")
  private Optional<String> line = Optional.empty();

  /**
   * The place of the pump that is meant: the one still to be chosen, else the one there is.
   *
   * @throws InvalidInput if there is none, or several and none is named
   */
  PumpPlace placeIn(Project project) {
    return placeIn(project, line, "--line", List.of());
  }

  /**
   * The same for a line that another option names.
   *
   * @param option its name, for messages
   * @param about lines that the command is about: of several pumps the only one in them is meant
   */
  static PumpPlace placeIn(
      Project project, Optional<String> line, String option, List<String> about) {
    List<PumpPlace> planned = PumpPlace.listPlanned(project.network());
    List<PumpPlace> chosen = PumpPlace.listChosen(project.network());
    if (line.isPresent()) {
      return named(project, line.get(), planned, chosen);
    }
    List<PumpPlace> candidates = planned.isEmpty() ? chosen : planned;
    if (candidates.isEmpty()) {
      throw wrong(project, "no line has a pump; write one, for example \"- pump: to be chosen\"");
    }
    List<PumpPlace> near =
        candidates.stream().filter(place -> about.contains(place.line().value())).toList();
    if (near.size() == 1) {
      return near.get(0);
    }
    if (candidates.size() > 1) {
      throw wrong(
          project,
          "several pumps could be meant; name the line of one with "
              + option
              + ": "
              + lines(candidates));
    }
    return candidates.get(0);
  }

  private static PumpPlace named(
      Project project, String line, List<PumpPlace> planned, List<PumpPlace> chosen) {
    LineName name = new LineName(line);
    for (List<PumpPlace> places : List.of(planned, chosen)) {
      for (PumpPlace place : places) {
        if (place.line().equals(name)) {
          return place;
        }
      }
    }
    List<String> lines =
        project.network().lines().stream().map(known -> known.name().value()).toList();
    String quoted = PlainText.quoted(name.value());
    throw wrong(
        project,
        lines.contains(name.value())
            ? "line "
                + quoted
                + " has no pump; write one in it, for example \"- pump: to be chosen\""
            : "no line is called " + quoted + Choices.hint(name.value(), lines));
  }

  private static String lines(List<PumpPlace> places) {
    return String.join(", ", places.stream().map(place -> place.line().value()).toList());
  }

  private static InvalidInput wrong(Project project, String message) {
    return new InvalidInput(project.places().whole(), message);
  }
}
