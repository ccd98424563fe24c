package rillwright.cli.page.panel;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.size.LineSizes;
import rillwright.cli.file.size.SizeOption;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.OtherPumps;
import rillwright.cli.need.WithTargets;
import rillwright.cli.page.html.Html;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.picture.SizesPicture;
import rillwright.cli.report.text.choice.SizesText;
import rillwright.cli.study.choice.GravityRequest;
import rillwright.cli.study.choice.PipesAnswer;
import rillwright.cli.study.choice.PipesRequest;
import rillwright.cli.study.choice.PumpsRequest;
import rillwright.cli.study.choice.SizeCurves;
import rillwright.cli.study.choice.SizeWithoutEffect;
import rillwright.solver.network.Run;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;

/** What each size of a line's pipe means, with the pump that is there. */
final class PipesPanel implements Panel {
  private static final String SIZES = "sizes";

  @Override
  public String name() {
    return "pipes";
  }

  @Override
  public String title() {
    return "Pipe sizes";
  }

  @Override
  public String what() {
    return "flow, watts and money for each size of a line's pipe";
  }

  @Override
  public void form(Project project, Html html) {
    List<String> lines =
        project.network().lines().stream()
            .filter(line -> line.parts().stream().anyMatch(Run.class::isInstance))
            .map(line -> line.name().value())
            .toList();
    Form form = new Form(this, html);
    form.choice("line", "line", lines);
    form.text(SIZES, "sizes, with commas between; empty for the next ones up", "");
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    WithTargets.require(project);
    ChosenPumps.require(project);
    List<SizeOption> sizes = sizes(project, filled);
    try {
      if (PumpPlace.listChosen(project.network()).isEmpty()) {
        return HtmlPage.below(
            SizesText.of(
                new GravityRequest(sizes, PumpsRequest.USUAL_YEARS, Optional.empty())
                    .answer(project, progress)),
            name());
      }
      PumpPlace place = PumpLines.of(project, filled);
      OtherPumps.requireChosen(project, place);
      PipesAnswer answer =
          new PipesRequest(
                  place, sizes, Optional.empty(), 1, PumpsRequest.USUAL_YEARS, Optional.empty())
              .answer(project, progress);
      Html html = new Html();
      html.made(
          HtmlPage.below(
              SizesText.of(answer).with(SizesPicture.of(answer, SizeCurves.of(answer))), name()));
      html.open("p", "class", "row");
      sizes.forEach(size -> Form.apply(html, "Take " + shown(size), size.changes()));
      return html.close().done();
    } catch (SizeWithoutEffect none) {
      throw new InvalidInput(
          project.places().ofLine(none.line()),
          "its pipe size changes nothing, because its runs name sizes of their own");
    }
  }

  private static String shown(SizeOption size) {
    return size.sizes().values().iterator().next().name();
  }

  private static List<SizeOption> sizes(Project project, Filled filled) {
    LineSizes line = new LineSizes(project, filled.text("line"));
    if (filled.text(SIZES).isEmpty()) {
      List<SizeOption> larger = line.larger(2);
      String now = now(project, filled.text("line"));
      List<SizeOption> sizes = new ArrayList<>();
      if (!now.isEmpty()) {
        sizes.add(line.read(now, Place.whole(SIZES)));
      }
      sizes.addAll(larger);
      return List.copyOf(new LinkedHashSet<>(sizes));
    }
    List<SizeOption> sizes = new ArrayList<>();
    for (String size : filled.text(SIZES).split(",", -1)) {
      sizes.add(line.read(size.strip(), Place.whole(SIZES)));
    }
    return List.copyOf(new LinkedHashSet<>(sizes));
  }

  private static String now(Project project, String line) {
    return project
        .tree()
        .findMap("lines")
        .flatMap(lines -> lines.findMap(line))
        .flatMap(fields -> fields.findMap("pipe"))
        .flatMap(pipe -> pipe.find("size"))
        .map(entry -> entry.value() instanceof Scalar size ? size.text() : "")
        .orElse("");
  }
}
