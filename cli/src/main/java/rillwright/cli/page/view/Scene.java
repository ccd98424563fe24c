package rillwright.cli.page.view;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.Show;
import rillwright.cli.page.desk.Desk;
import rillwright.cli.page.desk.Outcome;
import rillwright.cli.page.desk.Outcomes;
import rillwright.cli.page.drawing.CurvesView;
import rillwright.cli.page.drawing.Drawing;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.Panels;
import rillwright.cli.study.curve.Curves;
import rillwright.cli.study.curve.CurvesRequest;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.steady.NoBalance;

/**
 * What is seen of a desk on one screen.
 *
 * @param desk that it is of
 * @param book fields by the schema
 * @param outcomes what was computed last
 * @param panels the studies
 * @param units that are shown; empty for those of the file
 * @param widthPx of the screen's column
 */
public record Scene(
    Desk desk,
    FieldBook book,
    Outcomes outcomes,
    Panels panels,
    Optional<Show> units,
    int widthPx) {
  /** Everything as it stands on the page: what is seen beside what is done. */
  public String first() {
    return whole(true, Optional.empty());
  }

  /** Everything, each piece under its name, to take the place of what is there. */
  public String whole() {
    return whole(false, Optional.empty());
  }

  /** The same, with what the last change did to the job as it was before. */
  public String whole(Project before) {
    return whole(false, Optional.of(before));
  }

  private String whole(boolean placed, Optional<Project> before) {
    Outcome now = outcome(desk.sound());
    Html html = new Html();
    FaultPlaces faults = FaultPlaces.of(desk.now().tree(), desk.faults());
    BarView.print(desk, faults, now.project().show(), html);
    html.made(placed ? "<div class=\"bench\"><div class=\"see\">" : "");
    figures(now, before, false, html);
    html.made(placed ? "</div><div class=\"do\">" : "");
    TryView.print(now, html);
    desk.now().tree().ifPresent(tree -> FieldsView.print(tree, faults, book, html));
    html.made(placed ? "</div></div>" : "");
    if (placed) {
      panels.print(now.project(), html);
    } else {
      panels.printBesides(now.project(), html);
    }
    return html.done();
  }

  /** What follows while something is dragged. */
  public String tried(String change) {
    Outcome tried = outcome(desk.sound().with(List.of(change)));
    Html html = new Html();
    figures(tried, Optional.empty(), true, html);
    return html.done();
  }

  private void figures(Outcome now, Optional<Project> before, boolean tried, Html html) {
    html.open("section", "id", "drawing", "aria-label", "Long section");
    html.made(Drawing.of(now.section(), widthPx));
    if (now.solved().isPresent()) {
      html.leaf("p", "Dashed: the head line while running.", "class", "quiet");
    }
    html.close();
    FallsView.print(now, html);
    Optional<Outcome> saved = desk.saved().project().map(this::outcome);
    ChangedView.print(saved, before.map(this::outcome), now, tried, html);
    html.open("section", "id", "curves").leaf("h2", "Operating point");
    curves(now, html);
    html.close();
    FindingsView.print(now, html);
  }

  /** The project as it is shown. */
  public Project project() {
    return outcome(desk.sound()).project();
  }

  private Outcome outcome(Project project) {
    return outcomes.of(project, units.orElse(project.show()));
  }

  private void curves(Outcome now, Html html) {
    for (PumpPlace place : PumpPlace.listChosen(now.project().network())) {
      try {
        Curves curves = new CurvesRequest(place).answer(now.project());
        html.made(CurvesView.of(curves, widthPx));
        CurvesView.legend(curves).ifPresent(words -> html.leaf("p", words, "class", "quiet"));
      } catch (NoBalance none) {
        html.leaf("p", "No operating point: " + now.trouble().orElse(""), "class", "quiet");
      }
    }
  }
}
