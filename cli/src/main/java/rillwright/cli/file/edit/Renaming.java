package rillwright.cli.file.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;

/**
 * Gives something another name wherever it is named.
 *
 * @param section that it is in
 * @param from its name
 * @param to its new name
 */
record Renaming(String section, String from, String to) {
  private static final List<String> SECTIONS = List.of("points", "lines", "pumps", "streams");
  private static final Set<String> POINT_FIELDS = Set.of("from", "to", "at", "returns to");
  private static final Set<String> LINE_FIELDS = Set.of("pump", "valve", "line");
  private static final Set<String> MODEL = Set.of("pump", "model");

  /** The tree with another name for what an address leads to. */
  static MapNode in(MapNode tree, String address, String name) {
    Place place = Place.whole("edit of \"" + address + "\"");
    List<String> steps = Address.of(address).steps();
    if (steps.size() != 2 || !SECTIONS.contains(steps.get(0))) {
      throw new InvalidInput(
          place, "what can be renamed is in a section " + Choices.listed(SECTIONS));
    }
    List<String> there = tree.findMap(steps.get(0)).map(MapNode::keys).orElse(List.of());
    if (!there.contains(steps.get(1))) {
      throw new InvalidInput(
          place,
          "there is no " + PlainText.quoted(steps.get(1)) + Choices.hint(steps.get(1), there));
    }
    if (name.isBlank()) {
      throw new InvalidInput(place, "the new name is empty");
    }
    String to = name.strip();
    if (!to.equals(steps.get(1)) && there.contains(to)) {
      throw new InvalidInput(place, PlainText.quoted(to) + " is there already; choose another");
    }
    return new Renaming(steps.get(0), steps.get(1), to).inProject(tree);
  }

  private MapNode inProject(MapNode tree) {
    return inEach(
        changes(tree),
        entry ->
            entry.key().equals("conditions") && entry.value() instanceof MapNode conditions
                ? with(entry, inEach(conditions, it -> with(it, ofMap(it.value(), this::changes))))
                : entry);
  }

  /** In a project, or in the changes of a condition, which are nested like one. */
  private MapNode changes(MapNode map) {
    MapNode renamed =
        map.findMap(section)
            .map(named -> map.with(with(map.find(section).orElseThrow(), keyIn(named))))
            .orElse(map);
    return switch (section) {
      case "points" ->
          fieldsIn(
              fieldsIn(
                  fieldsIn(fieldsIn(renamed, "lines", POINT_FIELDS), "points", POINT_FIELDS),
                  "streams",
                  POINT_FIELDS),
              "readings",
              POINT_FIELDS);
      case "lines" -> fieldsIn(renamed, "readings", LINE_FIELDS);
      case "pumps" -> inEach(renamed, entry -> entry.key().equals("lines") ? models(entry) : entry);
      default -> renamed;
    };
  }

  private MapNode keyIn(MapNode named) {
    return inEach(
        named,
        entry -> entry.key().equals(from) ? new Entry(to, entry.keyPlace(), entry.value()) : entry);
  }

  /** With the name in some fields of each entry of a section. */
  private MapNode fieldsIn(MapNode map, String name, Set<String> fields) {
    UnaryOperator<MapNode> ofOne = one -> inEach(one, field -> field(field, fields));
    return inEach(
        map,
        entry -> {
          if (!entry.key().equals(name)) {
            return entry;
          }
          if (entry.value() instanceof ListNode rows) {
            List<Node> items = rows.items().stream().map(row -> ofMap(row, ofOne)).toList();
            return with(entry, new ListNode(items, rows.place()));
          }
          return with(
              entry,
              ofMap(entry.value(), all -> inEach(all, it -> with(it, ofMap(it.value(), ofOne)))));
        });
  }

  /** With the name wherever a pump's model stands in a section of lines. */
  private Entry models(Entry entry) {
    if (entry.value() instanceof ListNode list) {
      List<Node> items =
          list.items().stream().map(item -> ofMap(item, map -> inEach(map, this::models))).toList();
      return with(entry, new ListNode(items, list.place()));
    }
    return field(with(entry, ofMap(entry.value(), map -> inEach(map, this::models))), MODEL);
  }

  private Entry field(Entry entry, Set<String> fields) {
    return fields.contains(entry.key())
            && entry.value() instanceof Scalar named
            && named.text().equals(from)
        ? with(entry, new Scalar(to, Scalar.Form.TEXT, named.place()))
        : entry;
  }

  private static Node ofMap(Node node, UnaryOperator<MapNode> change) {
    return node instanceof MapNode map ? change.apply(map) : node;
  }

  private static Entry with(Entry entry, Node value) {
    return new Entry(entry.key(), entry.keyPlace(), value);
  }

  private static MapNode inEach(MapNode map, UnaryOperator<Entry> change) {
    List<Entry> entries = new ArrayList<>();
    map.entries().forEach(entry -> entries.add(change.apply(entry)));
    return new MapNode(entries, map.place());
  }
}
