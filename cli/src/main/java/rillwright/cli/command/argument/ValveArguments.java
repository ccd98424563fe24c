package rillwright.cli.command.argument;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Option;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.study.valvesetting.ValvePlace;

/** Which valves a command may set. */
public final class ValveArguments {
  @Option(
      names = "--valve",
      paramLabel = "LINE",
      description =
          "Sets the valve of this line: its last one that is marked adjustable, else its last one."
              + " May be given several times; without it all that are marked adjustable are set.")
  private List<String> lines = List.of();

  /**
   * The places of the valves.
   *
   * @throws InvalidInput if there are none or a line is not known
   */
  public List<ValvePlace> placesIn(Project project) {
    if (lines.isEmpty()) {
      List<ValvePlace> places = ValvePlace.listAdjustable(project.network());
      if (places.isEmpty()) {
        throw wrong(project, nothingToSet(project));
      }
      return places;
    }
    Set<ValvePlace> places = new LinkedHashSet<>();
    for (String line : lines) {
      places.add(placeIn(project, line));
    }
    return List.copyOf(places);
  }

  private static ValvePlace placeIn(Project project, String name) {
    List<String> known =
        project.network().lines().stream().map(line -> line.name().value()).toList();
    String quoted = PlainText.quoted(name);
    if (!known.contains(name)) {
      throw wrong(project, "no line is called " + quoted + Choices.hint(name, known));
    }
    Line line = project.network().line(new LineName(name));
    Optional<ValvePlace> place = ValvePlace.findIn(line);
    return place.orElseThrow(
        () ->
            new InvalidInput(
                project.places().ofLine(line.name()),
                "line " + quoted + " has no valve that could be set; " + withValves(project)));
  }

  private static String nothingToSet(Project project) {
    return "no valve is marked \"adjustable: yes\", so none may be set; mark those on the ways to"
        + " the falls, or name their lines with --valve; "
        + withValves(project);
  }

  private static String withValves(Project project) {
    List<String> lines =
        project.network().lines().stream()
            .filter(line -> ValvePlace.findIn(line).isPresent())
            .map(line -> PlainText.quoted(line.name().value()))
            .toList();
    return lines.isEmpty()
        ? "no line has a valve yet, write for example \"- valve: {type: ball, open: 100 %,"
            + " adjustable: yes}\""
        : "lines with a valve: " + String.join(", ", lines);
  }

  private static InvalidInput wrong(Project project, String message) {
    return new InvalidInput(project.places().whole(), message);
  }
}
