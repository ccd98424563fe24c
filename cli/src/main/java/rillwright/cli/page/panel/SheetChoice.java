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
import rillwright.cli.page.desk.Places;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.study.mend.kind.Pumps;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.DataSheetReader;
import rillwright.curves.sheet.fault.SheetFault;
import rillwright.curves.sheet.fault.SheetFaults;
import rillwright.curves.wording.PlainText;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.trial.PumpSetup;

/**
 * Data sheets that a panel tries: of a folder within that of the project, and those dropped onto
 * the page.
 *
 * @param folder that of the project
 */
record SheetChoice(Path folder) {
  private static final String DROPPED = "sheet:";

  /** The choice of dropped sheets alone, which the page makes where some are dropped. */
  private static final String FILES = "files dropped here";

  /**
   * Asks for them.
   *
   * @param own what is tried if no folder is chosen
   */
  void form(Panel panel, String own, Html html) {
    List<String> from = new ArrayList<>(List.of(own));
    from.addAll(folders());
    from.add(FILES);
    new Form(panel, html).choice("from", "data sheets", from);
    String id = "panel-" + panel.name() + "-files";
    html.open("label", "for", id).text("and these files (.csv), or drop them").close();
    html.empty(
        "input",
        "type",
        "file",
        "id",
        id,
        "multiple",
        "",
        "accept",
        ".csv,text/csv",
        "data-sheets",
        "");
    html.leaf("span", "", "class", "row dropped");
  }

  /** Folders of the project's own in which data sheets lie. */
  List<String> folders() {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(it -> Files.isDirectory(it, LinkOption.NOFOLLOW_LINKS))
          .filter(SheetChoice::hasSheets)
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

  /** Whether something else than the project's own pump was chosen to be tried. */
  boolean isChosen(Filled filled) {
    return filled.text("from").equals(FILES) || from(filled).isPresent();
  }

  /** The folder that was chosen; empty if none was. */
  Optional<String> from(Filled filled) {
    return Optional.of(filled.text("from")).filter(folders()::contains);
  }

  /**
   * The sheets of the folder that was chosen and those that were dropped; empty if there are none.
   *
   * @throws InvalidInput if there are some and none of them will do
   */
  Optional<SheetFolder> sheets(Project project, Filled filled) {
    double density = project.network().water().densityKgPerM3();
    Map<String, DataSheet> sheets = new LinkedHashMap<>();
    List<Fault> faults = new ArrayList<>();
    from(filled)
        .map(from -> SheetFolder.read(folder.resolve(from), density))
        .ifPresent(
            there -> {
              sheets.putAll(there.sheets());
              faults.addAll(there.faults());
            });
    filled
        .allOf(DROPPED)
        .forEach(
            (name, text) -> {
              try {
                byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
                sheets.put(name, new DataSheetReader(density).read(name, bytes));
              } catch (SheetFaults wrong) {
                wrong.faults().stream().map(it -> inSheet(name, it)).forEach(faults::add);
              }
            });
    if (sheets.isEmpty() && faults.isEmpty()) {
      return Optional.empty();
    }
    if (sheets.isEmpty()) {
      throw new InvalidInput(faults);
    }
    return Optional.of(ImpossibleSheets.without(new SheetFolder(sheets, faults), project));
  }

  private static Fault inSheet(String name, SheetFault wrong) {
    String where = PlainText.quoted(name) + ", line " + wrong.line() + ": ";
    return new Fault(name, wrong.line(), wrong.column(), where + wrong.message());
  }

  /**
   * A button that takes one pump, its data sheet put beside the project if it was dropped.
   *
   * @param besides changes that go with it
   */
  void take(
      Project project,
      PumpPlace place,
      PumpSetup setup,
      Filled filled,
      List<String> besides,
      Html html) {
    String model = setup.offer().model();
    String words = besides.isEmpty() ? "Take " + model : "and " + model;
    List<String> changes = new ArrayList<>(besides);
    changes.addAll(Pumps.instead(project.network(), place, model, Math.round(100 * setup.speed())));
    boolean isThere = project.sheets().containsKey(model);
    if (filled.fields().containsKey(DROPPED + model)) {
      html.leaf(
          "button",
          words,
          "type",
          "button",
          "data-do",
          "take-sheet",
          "data-at",
          String.join("\t", changes),
          "data-value",
          model);
      return;
    }
    if (!isThere) {
      from(filled)
          .ifPresent(
              it ->
                  changes.add(
                      0, Places.text(List.of("pumps", model)) + "=" + it + "/" + model + ".csv"));
    }
    Form.apply(html, words, changes);
  }
}
