package rillwright.cli.page.view;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.page.desk.Places;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.view.Item.Kind;
import rillwright.cli.schema.FieldRow;

/** Every point, line and part with its fields, in the order the water meets them. */
final class FieldsView {
  private final FieldBook book;
  private final FaultPlaces faults;
  private final Html html;
  private final AddView add;

  private FieldsView(FieldBook book, FaultPlaces faults, List<String> points, Html html) {
    this.book = book;
    this.faults = faults;
    this.html = html;
    this.add = new AddView(book, points, html);
  }

  static void print(MapNode tree, FaultPlaces faults, FieldBook book, Html html) {
    List<Item> items = Items.inOrder(tree);
    List<String> points =
        items.stream().filter(it -> it.kind() == Kind.POINT).map(Item::name).toList();
    FieldsView view = new FieldsView(book, faults, points, html);
    html.open("section", "id", "fields").leaf("h2", "In the order the water meets them");
    items.forEach(view::item);
    view.add.point();
    view.add.line();
    html.leaf("h2", "The rest of the file");
    List<Item> sections = Items.sections(tree);
    sections.forEach(view::item);
    view.newSection(sections);
    html.close();
  }

  private void item(Item item) {
    boolean wrong = !faults.below(item.address()).isEmpty();
    String kind = item.kind().name().toLowerCase(Locale.ROOT);
    html.open(
        "details",
        "id",
        Places.id(item.address()),
        "class",
        "item " + kind,
        wrong ? "open" : "",
        "");
    html.open("summary").leaf("b", item.name()).text(" ");
    html.leaf("span", item.summary());
    if (wrong) {
      html.leaf("strong", " ! something is wrong here", "class", "fault");
    }
    html.close();
    faults.at(item.address()).forEach(fault -> html.leaf("p", fault, "class", "fault"));
    html.open("div", "class", "grid");
    item.values().forEach(value -> field(item, value));
    html.close();
    missing(item);
    item.parts().forEach(this::item);
    if (item.kind() == Kind.LINE) {
      add.part(item);
    }
    if (item.definition().equals("part/run")) {
      add.secondFall(item);
    }
    doings(item);
    html.close();
  }

  private void field(Item item, Value value) {
    String id = Places.id(value.address()) + "-value";
    List<String> wrong = faults.at(value.address());
    Optional<FieldRow> row = book.find(item.definition(), value.field());
    html.open("div", "class", "field");
    html.open("label", "for", id).text(value.field().replace('.', ' ')).close();
    html.empty(
        "input",
        "id",
        id,
        "name",
        "value",
        "value",
        value.text(),
        "data-at",
        value.address(),
        "autocomplete",
        "off",
        "spellcheck",
        "false",
        wrong.isEmpty() ? "" : "aria-invalid",
        "true",
        row.isPresent() || !wrong.isEmpty() ? "aria-describedby" : "",
        id + "-said",
        row.filter(it -> !it.words().isEmpty()).isPresent() ? "list" : "",
        id + "-words");
    row.filter(it -> !it.words().isEmpty()).ifPresent(it -> words(id, it.words()));
    if (item.kind() != Kind.SECTION || value.field().contains(".")) {
      html.leaf(
          "button",
          "\u00d7",
          "type",
          "button",
          "class",
          "away",
          "data-do",
          "remove",
          "data-at",
          value.address(),
          "aria-label",
          "take away " + value.field().replace('.', ' ') + " of " + item.name());
    }
    html.open("div", "id", id + "-said", "class", "said-of-it");
    wrong.forEach(fault -> html.leaf("p", fault, "class", "fault"));
    row.ifPresent(it -> html.leaf("p", it.meaning(), "class", "hint"));
    html.close().close();
  }

  private void words(String id, List<String> words) {
    html.open("datalist", "id", id + "-words");
    words.forEach(word -> html.leaf("option", "", "value", word));
    html.close();
  }

  /** Fields that it could have besides. */
  private void missing(Item item) {
    Set<String> there = item.values().stream().map(Value::field).collect(Collectors.toSet());
    boolean isSection = item.kind() == Kind.SECTION;
    List<FieldRow> rows =
        book.of(item.definition()).stream()
            .filter(row -> !isSection || row.name().startsWith(item.name() + "."))
            .filter(row -> !there.contains(row.name()) && !row.name().equals("parts"))
            .filter(row -> !row.takes().equals("fields") && !row.takes().equals("list"))
            .filter(row -> there.stream().noneMatch(it -> it.startsWith(row.name() + ".")))
            .toList();
    more(rows, Places.id(item.address()), isSection ? "" : item.address(), item.name());
  }

  /** Sections that the file does not have yet. */
  private void newSection(List<Item> sections) {
    Set<String> there = sections.stream().map(Item::name).collect(Collectors.toSet());
    List<FieldRow> rows =
        book.of("").stream()
            .filter(row -> !row.takes().equals("fields") && !row.takes().equals("list"))
            .filter(row -> !there.contains(row.name().replaceFirst("\\..*", "")))
            .toList();
    html.open("details", "class", "item new", "id", "new-section");
    html.leaf("summary", "Add to the rest");
    more(rows, "new-section", "", "the file");
    html.close();
  }

  /**
   * Asks for one of some fields and its value.
   *
   * @param at address below which they lie; empty for the file itself
   */
  private void more(List<FieldRow> rows, String of, String at, String name) {
    if (rows.isEmpty()) {
      return;
    }
    String id = of + "-more";
    html.open("form", "class", "row more", "data-do", "set-field", "data-at", at);
    html.open("label", "for", id).text("one more field").close();
    html.open("select", "id", id, "name", "field");
    rows.forEach(row -> html.leaf("option", row.name().replace('.', ' '), "value", row.name()));
    html.close();
    html.empty(
        "input",
        "name",
        "value",
        "aria-label",
        "its value, for " + name,
        "autocomplete",
        "off",
        "required",
        "");
    html.leaf("button", "Add");
    html.close();
  }

  /** Rename, move, take away. */
  private void doings(Item item) {
    if (item.kind() == Kind.SECTION) {
      return;
    }
    if (item.kind() != Kind.PART) {
      String id = Places.id(item.address()) + "-name";
      html.open("form", "class", "row", "data-do", "rename", "data-at", item.address());
      html.open("label", "for", id).text("name").close();
      html.empty("input", "id", id, "name", "name", "value", item.name(), "autocomplete", "off");
      html.leaf("button", "Rename").close();
    }
    html.open("p", "class", "row");
    if (item.kind() == Kind.PART) {
      move(item, "up", "Move upstream");
      move(item, "down", "Move downstream");
    }
    html.leaf(
        "button",
        "Take away " + item.name(),
        "type",
        "button",
        "data-do",
        "remove",
        "data-at",
        item.address());
    html.close();
  }

  private void move(Item part, String way, String words) {
    html.leaf(
        "button",
        words,
        "type",
        "button",
        "data-do",
        "move-" + way,
        "data-at",
        part.address(),
        "data-value",
        Integer.toString(part.position()),
        "aria-label",
        words + ": " + part.name());
  }
}
