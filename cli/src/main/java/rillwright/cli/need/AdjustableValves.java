package rillwright.cli.need;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.curves.wording.PlainText;
import rillwright.solver.study.valvesetting.ValvePlace;

/** The valves of a project that may be set. */
public final class AdjustableValves {
  private AdjustableValves() {}

  /**
   * All that are marked adjustable.
   *
   * @param others how others are named, after "mark those to be set"; may be empty
   * @throws InvalidInput if there are none
   */
  public static List<ValvePlace> in(Project project, String others) {
    List<ValvePlace> places = ValvePlace.listAdjustable(project.network());
    if (places.isEmpty()) {
      throw new InvalidInput(
          project.places().whole(),
          "no valve is marked \"adjustable: yes\"; mark those to be set"
              + others
              + "; "
              + withValves(project));
    }
    return places;
  }

  /** Which lines have a valve, for people. */
  public static String withValves(Project project) {
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
}
