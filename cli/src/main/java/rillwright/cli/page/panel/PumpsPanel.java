package rillwright.cli.page.panel;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.need.ImpossibleSheets;
import rillwright.cli.need.OtherPumps;
import rillwright.cli.need.WithTargets;
import rillwright.cli.page.desk.Places;
import rillwright.cli.page.html.Html;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.picture.CandidatesPicture;
import rillwright.cli.report.text.choice.PumpsText;
import rillwright.cli.study.choice.CandidateCurves;
import rillwright.cli.study.choice.PumpsAnswer;
import rillwright.cli.study.choice.PumpsRequest;
import rillwright.cli.study.mend.kind.Pumps;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.DataSheetReader;
import rillwright.curves.sheet.fault.SheetFaults;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.trial.PumpSetup;

/**
 * Which pump meets the targets, of those that the project names and of data sheets that are dropped
 * onto the page.
 */
final class PumpsPanel implements Panel {
  private static final String DROPPED = "sheet:";
  private static final String OWN = "the project's own";
  private static final int SHOWN = 4;

  private final Path folder;

  /**
   * A panel.
   *
   * @param folder that of the project: data sheets of its folders may be tried
   */
  PumpsPanel(Path folder) {
    this.folder = folder;
  }

  @Override
  public String name() {
    return "pumps";
  }

  @Override
  public String title() {
    return "Pumps";
  }

  @Override
  public String what() {
    return "which of your data sheets meets the targets, ranked by cost";
  }

  @Override
  public void form(Project project, Html html) {
    PumpLines.choice(this, project, html);
    List<String> from = new ArrayList<>(List.of(OWN));
    from.addAll(folders());
    new Form(this, html).choice("from", "data sheets", from);
    html.open("label", "for", "panel-pumps-files")
        .text("and these files (.csv), or drop them")
        .close();
    html.empty(
        "input",
        "type",
        "file",
        "id",
        "panel-pumps-files",
        "multiple",
        "",
        "accept",
        ".csv,text/csv",
        "data-sheets",
        "");
    html.leaf("span", "", "id", "dropped", "class", "quiet");
  }

  /** Folders of the project's own in which data sheets lie. */
  private List<String> folders() {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(it -> Files.isDirectory(it, LinkOption.NOFOLLOW_LINKS))
          .filter(PumpsPanel::hasSheets)
          .map(it -> it.getFileName().toString())
          .sorted()
          .toList();
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  private static boolean hasSheets(Path folder) {
    try {
      return SheetFolder.list(folder).stream().noneMatch(Files::isSymbolicLink);
    } catch (InvalidInput none) {
      return false;
    }
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    PumpPlace place = PumpLines.of(project, filled);
    WithTargets.require(project);
    OtherPumps.requireChosen(project, place);
    Map<String, String> files = new LinkedHashMap<>();
    SheetFolder sheets = sheets(project, filled, files);
    PumpsAnswer answer =
        PumpsRequest.usual(place, ImpossibleSheets.without(sheets, project))
            .answer(project, progress);
    Html html = new Html();
    html.made(
        HtmlPage.below(
            PumpsText.of(answer).with(CandidatesPicture.of(answer, CandidateCurves.of(answer))),
            name()));
    html.open("p", "class", "row");
    answer.choice().ranked().stream()
        .map(rated -> rated.trial().setup())
        .filter(setup -> setup.count() == 1)
        .limit(SHOWN)
        .forEach(setup -> take(project, place, setup, files, html));
    return html.close().done();
  }

  /**
   * The sheets to try.
   *
   * @param files receives where each lies, as the project would name it; a dropped one lies nowhere
   */
  private SheetFolder sheets(Project project, Filled filled, Map<String, String> files) {
    double density = project.network().water().densityKgPerM3();
    Map<String, DataSheet> sheets = new LinkedHashMap<>();
    List<Fault> faults = new ArrayList<>();
    String from = filled.text("from");
    if (folders().contains(from)) {
      SheetFolder there = SheetFolder.read(folder.resolve(from), density);
      sheets.putAll(there.sheets());
      faults.addAll(there.faults());
      there.sheets().keySet().forEach(model -> files.put(model, from + "/" + model + ".csv"));
    } else {
      sheets.putAll(project.sheets());
    }
    filled
        .allOf(DROPPED)
        .forEach((name, text) -> dropped(name, text, density).into(sheets, faults, name));
    if (sheets.isEmpty()) {
      throw new InvalidInput(
          faults.isEmpty()
              ? List.of(Fault.at(project.places().whole(), "no data sheet is there to try"))
              : faults);
    }
    return new SheetFolder(sheets, faults);
  }

  /** What a dropped file is. */
  private record Dropped(Optional<DataSheet> sheet, List<Fault> faults) {
    void into(Map<String, DataSheet> sheets, List<Fault> all, String name) {
      sheet.ifPresent(it -> sheets.put(name, it));
      all.addAll(faults);
    }
  }

  private static Dropped dropped(String name, String text, double density) {
    try {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      return new Dropped(Optional.of(new DataSheetReader(density).read(name, bytes)), List.of());
    } catch (SheetFaults wrong) {
      return new Dropped(
          Optional.empty(),
          wrong.faults().stream()
              .map(it -> new Fault(name, it.line(), it.column(), it.message()))
              .toList());
    }
  }

  private static void take(
      Project project, PumpPlace place, PumpSetup setup, Map<String, String> files, Html html) {
    String model = setup.offer().model();
    String line = Places.text(List.of("lines", place.line().value()));
    List<String> changes = new ArrayList<>();
    boolean isThere = project.sheets().containsKey(model);
    if (!isThere && files.containsKey(model)) {
      changes.add(Places.text(List.of("pumps", model)) + "=" + files.get(model));
    }
    if (!isThere && !files.containsKey(model)) {
      html.leaf(
          "button",
          "Take " + model,
          "type",
          "button",
          "data-do",
          "take-sheet",
          "data-at",
          line,
          "data-value",
          model);
      return;
    }
    changes.addAll(Pumps.instead(project.network(), place, model, Math.round(100 * setup.speed())));
    Form.apply(html, "Take " + model, changes);
  }
}
