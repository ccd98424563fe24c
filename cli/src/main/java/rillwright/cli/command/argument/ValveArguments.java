package rillwright.cli.command.argument;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.need.AdjustableValves;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.study.valvesetting.ValvePlace;

/** Which valves a command may set. */
public final class ValveArguments {
  @Option(
      names = "--valves",
      paramLabel = "LINE,LINE",
      description =
          "Sets the valves of these lines, of each the last one that is marked adjustable, else its"
              + " last one. Without it all that are marked adjustable are set.")
  private List<String> given = List.of();

  /**
   * The places of the valves.
   *
   * @throws InvalidInput if there are none or a line is not known
   */
  public List<ValvePlace> placesIn(Project project) {
    if (given.isEmpty()) {
      return AdjustableValves.in(project, ", or name their lines with --valves");
    }
    Set<ValvePlace> places = new LinkedHashSet<>();
    for (String line : lines(given, known(project))) {
      places.add(placeIn(project, line));
    }
    return List.copyOf(places);
  }

  /** Names with commas between; a name that has one itself stands alone. */
  private static List<String> lines(List<String> given, List<String> known) {
    return given.stream()
        .flatMap(it -> known.contains(it) ? Stream.of(it) : Arrays.stream(it.split(",", -1)))
        .map(String::strip)
        .toList();
  }

  private static List<String> known(Project project) {
    return project.network().lines().stream().map(line -> line.name().value()).toList();
  }

  private static ValvePlace placeIn(Project project, String name) {
    List<String> known = known(project);
    String quoted = PlainText.quoted(name);
    if (!known.contains(name)) {
      throw wrong(project, "there is no line " + quoted + Choices.hint(name, known));
    }
    Line line = project.network().line(new LineName(name));
    Optional<ValvePlace> place = ValvePlace.findIn(line);
    return place.orElseThrow(
        () ->
            new InvalidInput(
                project.places().ofLine(line.name()),
                "line "
                    + quoted
                    + " has no valve to set; "
                    + AdjustableValves.withValves(project)));
  }

  private static InvalidInput wrong(Project project, String message) {
    return new InvalidInput(project.places().whole(), message);
  }
}
