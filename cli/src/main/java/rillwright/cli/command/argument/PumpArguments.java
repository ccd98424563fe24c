package rillwright.cli.command.argument;

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
public final class PumpArguments {
  @Option(
      names = "--pump",
      paramLabel = "LINE",
      description = "Chooses the pump in this line, where there are several.")
  private Optional<String> line = Optional.empty();

  /** Whether a pump is chosen by its line. */
  public boolean isGiven() {
    return line.isPresent();
  }

  /**
   * The place of the pump that is meant: the one still to be chosen, else the one there is.
   *
   * @throws InvalidInput if there is none, or several and none is named
   */
  public PumpPlace placeIn(Project project) {
    return placeIn(project, List.of());
  }

  /**
   * The same for a command that studies some lines.
   *
   * @param studied these lines: of several pumps the only one in them is meant
   */
  public PumpPlace placeIn(Project project, List<String> studied) {
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
        candidates.stream().filter(place -> studied.contains(place.line().value())).toList();
    if (near.size() == 1) {
      return near.get(0);
    }
    List<String> lines = candidates.stream().map(place -> place.line().value()).distinct().toList();
    if (lines.size() > 1) {
      throw wrong(
          project, "there are several pumps; choose one with --pump: " + String.join(", ", lines));
    }
    return only(project, candidates);
  }

  private static PumpPlace named(
      Project project, String line, List<PumpPlace> planned, List<PumpPlace> chosen) {
    LineName name = new LineName(line);
    for (List<PumpPlace> places : List.of(planned, chosen)) {
      List<PumpPlace> there = places.stream().filter(it -> it.line().equals(name)).toList();
      if (!there.isEmpty()) {
        return only(project, there);
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
            : "there is no line " + quoted + Choices.hint(name.value(), lines));
  }

  /** The pump of a line; refused if the line has several, which no option tells apart. */
  private static PumpPlace only(Project project, List<PumpPlace> inOneLine) {
    PumpPlace first = inOneLine.get(0);
    if (inOneLine.size() == 1) {
      return first;
    }
    boolean planned = PumpPlace.listPlanned(project.network()).contains(first);
    throw wrong(
        project,
        "line "
            + PlainText.quoted(first.line().value())
            + " has "
            + inOneLine.size()
            + (planned
                ? " pumps to be chosen; choose all but one by name first"
                : " pumps; write the one to study as \"- pump: to be chosen\""));
  }

  private static InvalidInput wrong(Project project, String message) {
    return new InvalidInput(project.places().whole(), message);
  }
}
