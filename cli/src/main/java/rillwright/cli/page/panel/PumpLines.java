package rillwright.cli.page.panel;

import java.util.List;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.solver.pumping.PumpPlace;

/** The line whose pump a panel is about. */
final class PumpLines {
  private PumpLines() {}

  private static List<PumpPlace> places(Project project) {
    return Stream.concat(
            PumpPlace.listPlanned(project.network()).stream(),
            PumpPlace.listChosen(project.network()).stream())
        .toList();
  }

  /** Lets one choose where there are several. */
  static void choice(Panel panel, Project project, Html html) {
    List<String> lines =
        places(project).stream().map(place -> place.line().value()).distinct().toList();
    if (lines.size() > 1) {
      new Form(panel, html).choice("pump", "pump of line", lines);
    }
  }

  /**
   * The pump that is meant.
   *
   * @throws InvalidInput if there is none
   */
  static PumpPlace of(Project project, Filled filled) {
    String line = filled.text("pump");
    return places(project).stream()
        .filter(place -> line.isEmpty() || place.line().value().equals(line))
        .findFirst()
        .orElseThrow(
            () ->
                new InvalidInput(
                    project.places().whole(), "no line has a pump; add one to a line first"));
  }
}
