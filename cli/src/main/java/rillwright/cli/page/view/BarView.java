package rillwright.cli.page.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.Show;
import rillwright.cli.page.desk.Desk;
import rillwright.cli.page.desk.Places;
import rillwright.cli.page.html.Html;

/** What is above all: which job, back and forth, saving, and what must be known before. */
final class BarView {
  private final Desk desk;
  private final Html html;

  private BarView(Desk desk, Html html) {
    this.desk = desk;
    this.html = html;
  }

  static void print(Desk desk, FaultPlaces faults, Show units, Html html) {
    BarView view = new BarView(desk, html);
    view.bar(units);
    view.notices(faults);
  }

  private void bar(Show units) {
    html.open(
        "header",
        "id",
        "bar",
        "data-number",
        Integer.toString(desk.number()),
        "data-state",
        desk.state());
    html.skips("Sliders", "try", "Fields", "fields", "Studies", "studies");
    html.open("div", "class", "job");
    html.leaf("h1", desk.sound().title());
    html.leaf(
        "p",
        desk.path().getFileName() + (desk.isChanged() ? ", changed, not saved" : ", as saved"),
        "class",
        "file");
    html.close().open("div", "class", "row tools");
    button("undo", "Undo", desk.undoable());
    button("redo", "Redo", desk.redoable());
    html.leaf(
        "button",
        "Save",
        "type",
        "button",
        "class",
        "main",
        "id",
        "do-save",
        "data-do",
        "save",
        desk.isChanged() ? "" : "disabled",
        "");
    html.open("span", "class", "units", "role", "group", "aria-label", "Units shown");
    unit("us", "US", units == Show.US);
    unit("metric", "Metric", units == Show.METRIC);
    html.close().close().close();
  }

  private void button(String doing, String words, Optional<String> what) {
    html.leaf(
        "button",
        words,
        "type",
        "button",
        "id",
        "do-" + doing,
        "data-do",
        doing,
        what.isPresent() ? "title" : "disabled",
        what.orElse(""));
  }

  private void unit(String units, String words, boolean shown) {
    html.leaf(
        "button",
        words,
        "type",
        "button",
        "id",
        "units-" + units,
        "data-units",
        units,
        "aria-pressed",
        Boolean.toString(shown));
  }

  private void notices(FaultPlaces faults) {
    html.open("section", "id", "notices", "aria-label", "To know first", "aria-live", "polite");
    if (desk.changedOnDisk()) {
      notice("The file was changed on the disk meanwhile; nothing is written over it.");
      doing("take-from-disk", "Show the file as it is now");
      html.close();
    }
    desk.draftTrouble()
        .ifPresent(
            trouble -> {
              notice(trouble);
              html.close();
            });
    if (desk.isOpenElsewhere()) {
      notice("Another page has unsaved changes to this file. Save in one of them only.");
      html.close();
    }
    if (desk.offered().isPresent()) {
      notice("Unsaved changes from before are kept beside the file.");
      doing("take-up-draft", "Take them up");
      doing("forget-draft", "Throw them away");
      html.close();
    }
    faults(faults.all());
    html.close();
  }

  private void faults(Map<String, List<String>> faults) {
    if (faults.isEmpty()) {
      return;
    }
    notice("Something is wrong, so the figures are those of before:");
    html.open("ul");
    faults.forEach(
        (address, messages) ->
            messages.forEach(
                message -> {
                  html.open("li");
                  if (address.isEmpty()) {
                    html.text(message);
                  } else {
                    html.leaf("a", message, "href", "#" + Places.id(address), "class", "to-fault");
                  }
                  html.close();
                }));
    html.close().close();
  }

  private void notice(String words) {
    html.open("div", "class", "notice").leaf("p", words);
  }

  private void doing(String doing, String words) {
    html.leaf("button", words, "type", "button", "data-do", doing);
  }
}
