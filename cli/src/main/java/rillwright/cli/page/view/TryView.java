package rillwright.cli.page.view;

import java.util.List;
import rillwright.cli.page.desk.Handle;
import rillwright.cli.page.desk.Handles;
import rillwright.cli.page.desk.Outcome;
import rillwright.cli.page.desk.Places;
import rillwright.cli.page.html.Html;

/** What can be dragged: a slider for each handle, with a step to either side. */
final class TryView {
  private static final String SEPARATOR = "\t";

  private TryView() {}

  static void print(Outcome outcome, Html html) {
    html.open("section", "id", "try").leaf("h2", "Drag and see");
    html.leaf(
        "p",
        "The falls follow while you drag. Let go to keep it; the file changes when you save.",
        "class",
        "quiet");
    List<Handle> handles = Handles.of(outcome.project());
    html.open("div", "class", "handles-to-drag");
    for (Handle handle : handles) {
      handle(handle, html);
    }
    html.close().close();
  }

  private static void handle(Handle handle, Html html) {
    String id = Places.id(handle.address()).replaceFirst("at-", "try-");
    html.open("div", "class", "drag", "data-at", handle.address());
    html.open("label", "for", id).text(handle.what()).close();
    html.leaf("output", handle.written(), "for", id);
    html.leaf(
        "button",
        "\u2212",
        "type",
        "button",
        "tabindex", // the slider itself takes arrow keys
        "-1",
        "data-step",
        "-1",
        "aria-label",
        "less: " + handle.what());
    html.empty(
        "input",
        "type",
        "range",
        "id",
        id,
        "min",
        "0",
        "max",
        Integer.toString(handle.choices().size() - 1),
        "step",
        "1",
        "value",
        Integer.toString(handle.chosen()),
        "data-choices",
        String.join(SEPARATOR, handle.choices()),
        "aria-valuetext",
        handle.written());
    html.leaf(
        "button",
        "+",
        "type",
        "button",
        "tabindex",
        "-1",
        "data-step",
        "1",
        "aria-label",
        "more: " + handle.what());
    html.close();
  }
}
