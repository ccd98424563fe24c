package rillwright.cli.page.view;

import java.util.List;
import java.util.Optional;
import rillwright.cli.page.desk.Places;
import rillwright.cli.page.desk.SecondFall;
import rillwright.cli.page.html.Html;

/**
 * Forms that add points, lines, parts and whole branches.
 *
 * @param book kinds by the schema
 * @param points names of those there are
 * @param html printed to
 */
record AddView(FieldBook book, List<String> points, Html html) {
  void part(Item line) {
    String id = Places.id(line.address()) + "-part";
    html.open("form", "class", "row", "data-do", "add-part", "data-at", line.address());
    html.open("label", "for", id).text("one more part").close();
    html.open("select", "id", id, "name", "kind");
    book.parts().forEach(kind -> html.leaf("option", kind));
    html.close();
    html.leaf("button", "Add part").close();
  }

  /** A second fall off a run whose length says where its middle is. */
  void secondFall(Item run) {
    Optional<Value> length =
        run.values().stream().filter(it -> it.field().equals("length")).findFirst();
    Optional<String> middle = length.map(Value::text).flatMap(SecondFall::middle);
    if (middle.isEmpty()) {
      return;
    }
    String id = Places.id(run.address());
    html.open("form", "class", "row", "data-do", "add-second-fall", "data-at", run.address());
    text(id + "-fall", "name", "second fall off this run: its name", "second fall");
    text(id + "-tee", "value", "tee after", middle.get());
    html.empty("input", "type", "hidden", "name", "length", "value", length.get().text());
    html.leaf("button", "Add tee, branch and fall").close();
  }

  void point() {
    html.open("details", "class", "item new", "id", "new-point").leaf("summary", "Add a point");
    html.open("form", "class", "row", "data-do", "add-point");
    text("new-point-name", "name", "its name", "");
    choice("new-point-kind", "kind", "its kind", book.points());
    html.leaf("button", "Add point").close().close();
  }

  void line() {
    html.open("details", "class", "item new", "id", "new-line").leaf("summary", "Add a line");
    html.open("form", "class", "row", "data-do", "add-line");
    text("new-line-name", "name", "its name", "");
    choice("new-line-from", "from", "from", points);
    choice("new-line-to", "to", "to", points);
    html.leaf("button", "Add line").close().close();
  }

  private void text(String id, String name, String label, String value) {
    html.open("label", "for", id).text(label).close();
    html.empty(
        "input", "id", id, "name", name, "value", value, "autocomplete", "off", "required", "");
  }

  private void choice(String id, String name, String label, List<String> choices) {
    html.open("label", "for", id).text(label).close();
    html.open("select", "id", id, "name", name);
    choices.forEach(choice -> html.leaf("option", choice));
    html.close();
  }
}
