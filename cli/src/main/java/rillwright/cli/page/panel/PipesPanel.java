package rillwright.cli.page.panel;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.file.size.LineSizes;
import rillwright.cli.file.size.SizeOption;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.OtherPumps;
import rillwright.cli.need.SizesJob;
import rillwright.cli.need.WithTargets;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.picture.GravityPicture;
import rillwright.cli.report.picture.SizesPicture;
import rillwright.cli.report.text.choice.SizesText;
import rillwright.cli.study.choice.GravityAnswer;
import rillwright.cli.study.choice.GravityRequest;
import rillwright.cli.study.choice.PipesAnswer;
import rillwright.cli.study.choice.PipesRequest;
import rillwright.cli.study.choice.PumpsRequest;
import rillwright.cli.study.choice.SizeCurves;
import rillwright.cli.study.choice.SizeWithoutEffect;
import rillwright.solver.network.Run;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.study.pipechoice.RatedPipe;

/**
 * What each size of a line's pipe means, with the pump that is there or its own of data sheets.
 *
 * @param sheets to choose among
 */
record PipesPanel(SheetChoice sheets) implements Panel {
  private static final String SIZES = "sizes";

  @Override
  public String name() {
    return "pipes";
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
    sheets.form(this, "the pump that is there", html);
    form.conditions();
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    WithTargets.require(project);
    List<SizeOption> sizes = sizes(project, filled);
    Optional<SheetFolder> tried =
        sheets.isChosen(filled) ? sheets.sheets(project, filled) : Optional.empty();
    try {
      boolean pumped =
          project.network().isPumped() || !PumpPlace.listPlanned(project.network()).isEmpty();
      return pumped
          ? pumped(project, filled, sizes, tried, progress)
          : ofItself(project, filled, sizes, progress);
    } catch (SizeWithoutEffect none) {
      throw SizesJob.withoutEffect(project, none);
    }
  }

  private String ofItself(
      Project project, Filled filled, List<SizeOption> sizes, Progress progress) {
    GravityAnswer answer =
        new GravityRequest(
                sizes, PumpsRequest.USUAL_YEARS, filled.inConditions(project, WithTargets::require))
            .answer(project, progress);
    Html html = new Html();
    html.made(HtmlPage.below(SizesText.of(answer).with(GravityPicture.of(answer)), name()));
    html.open("p", "class", "row");
    sizes.forEach(size -> Form.apply(html, "Take " + shown(size), size.changes()));
    return html.close().done();
  }

  private String pumped(
      Project project,
      Filled filled,
      List<SizeOption> sizes,
      Optional<SheetFolder> tried,
      Progress progress) {
    PumpPlace place = PumpLines.of(project, filled);
    OtherPumps.requireChosen(project, place);
    if (tried.isEmpty()) {
      SizesJob.requireRunning(project, place, "choose data sheets");
    }
    PipesAnswer answer =
        new PipesRequest(
                place,
                sizes,
                tried,
                1,
                PumpsRequest.USUAL_YEARS,
                filled.inConditions(project, state -> ChosenPumps.requireFor(state, place)))
            .answer(project, progress);
    Html html = new Html();
    html.made(
        HtmlPage.below(
            SizesText.of(answer).with(SizesPicture.of(answer, SizeCurves.of(answer))), name()));
    html.open("p", "class", "row");
    for (RatedPipe rated : answer.choice().ranked()) {
      sizes.stream()
          .filter(size -> size.sizes().equals(rated.option().sizes()))
          .forEach(
              size -> {
                Form.apply(html, "Take " + shown(size), size.changes());
                if (tried.isPresent()) {
                  sheets.take(
                      project, place, rated.pump().trial().setup(), filled, size.changes(), html);
                }
              });
    }
    return html.close().done();
  }

  private static String shown(SizeOption size) {
    return size.sizes().values().iterator().next().name();
  }

  private static List<SizeOption> sizes(Project project, Filled filled) {
    LineSizes line = new LineSizes(project, filled.text("line"));
    Set<SizeOption> sizes = new LinkedHashSet<>();
    String written = filled.text(SIZES).isEmpty() ? now(project, filled) : filled.text(SIZES);
    if (!written.isEmpty()) {
      for (String size : written.split(",", -1)) {
        sizes.add(line.read(size.strip(), Place.whole(SIZES)));
      }
    }
    if (filled.text(SIZES).isEmpty()) {
      sizes.addAll(line.larger(2));
    }
    if (sizes.isEmpty()) {
      throw new InvalidInput(
          project.places().whole(),
          "no larger size of this line's pipe is known; name the sizes to be tried");
    }
    return List.copyOf(sizes);
  }

  private static String now(Project project, Filled filled) {
    return project
        .tree()
        .findMap("lines")
        .flatMap(lines -> lines.findMap(filled.text("line")))
        .flatMap(fields -> fields.findMap("pipe"))
        .flatMap(pipe -> pipe.find("size"))
        .map(entry -> entry.value() instanceof Scalar size ? size.text() : "")
        .orElse("");
  }
}
