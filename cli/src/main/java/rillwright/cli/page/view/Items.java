package rillwright.cli.page.view;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.page.desk.Places;
import rillwright.cli.page.view.Item.Kind;

/**
 * The pieces of a job by its text alone, be it right or wrong, in the order the water meets them.
 */
final class Items {
  private static final String POINTS = "points";
  private static final String LINES = "lines";

  private final MapNode points;
  private final MapNode lines;
  private final List<Item> found = new ArrayList<>();
  private final Set<String> met = new LinkedHashSet<>();

  private Items(MapNode tree) {
    MapNode none = new MapNode(List.of(), tree.place());
    this.points = tree.findMap(POINTS).orElse(none);
    this.lines = tree.findMap(LINES).orElse(none);
  }

  /** Points and lines: from open water on, each point followed by what leaves it. */
  static List<Item> inOrder(MapNode tree) {
    Items items = new Items(tree);
    for (Entry point : items.points.entries()) {
      if (text(point.value(), "kind").equals(Optional.of("basin"))) {
        items.from(point.key());
      }
    }
    items.points.keys().forEach(items::from);
    items.lines.entries().forEach(items::line);
    return items.found;
  }

  private void from(String name) {
    Optional<Entry> point = points.find(name);
    if (point.isEmpty() || !met.add(POINTS + name)) {
      return;
    }
    List<String> steps = List.of(POINTS, name);
    found.add(
        new Item(
            Kind.POINT,
            Places.text(steps),
            name,
            text(point.get().value(), "kind").orElse("point"),
            0,
            values(point.get().value(), steps, ""),
            List.of()));
    for (Entry line : lines.entries()) {
      if (text(line.value(), "from").equals(Optional.of(name))) {
        line(line);
        text(line.value(), "to").ifPresent(this::from);
      }
    }
  }

  private void line(Entry line) {
    if (!met.add(LINES + line.key())) {
      return;
    }
    List<String> steps = List.of(LINES, line.key());
    List<Value> values = new ArrayList<>();
    List<Item> parts = new ArrayList<>();
    if (line.value() instanceof MapNode map) {
      for (Entry entry : map.entries()) {
        if (entry.key().equals("parts") && entry.value() instanceof ListNode list) {
          parts.addAll(parts(list, steps));
        } else {
          values.addAll(values(entry.value(), longer(steps, entry.key()), entry.key()));
        }
      }
    }
    found.add(new Item(Kind.LINE, Places.text(steps), line.key(), "line", 0, values, parts));
  }

  private static List<Item> parts(ListNode list, List<String> line) {
    List<Item> parts = new ArrayList<>();
    for (PartStep.Written part : PartStep.listIn(list.items())) {
      List<String> steps = longer(line, part.step());
      Node said = part.entry().value();
      List<Value> values =
          part.bareField()
              .map(bare -> values(said, longer(steps, bare), bare))
              .orElseGet(() -> values(said, steps, ""));
      parts.add(
          new Item(
              Kind.PART,
              Places.text(steps),
              part.step(),
              "part/" + part.entry().key(),
              part.position() + 1,
              values,
              List.of()));
    }
    return parts;
  }

  /** All but points and lines, a section each. */
  static List<Item> sections(MapNode tree) {
    List<Item> sections = new ArrayList<>();
    for (Entry entry : tree.entries()) {
      if (!entry.key().equals(POINTS) && !entry.key().equals(LINES)) {
        List<Value> values = values(entry.value(), List.of(entry.key()), entry.key());
        sections.add(
            new Item(
                Kind.SECTION,
                Places.text(List.of(entry.key())),
                entry.key(),
                "",
                0,
                values,
                List.of()));
      }
    }
    return sections;
  }

  private static List<Value> values(Node node, List<String> steps, String field) {
    List<Value> values = new ArrayList<>();
    if (node instanceof Scalar scalar) {
      values.add(new Value(Places.text(steps), field, scalar.text()));
    } else if (node instanceof MapNode map) {
      for (Entry entry : map.entries()) {
        values.addAll(values(entry.value(), longer(steps, entry.key()), below(field, entry.key())));
      }
    } else if (node instanceof ListNode list) {
      for (int i = 0; i < list.items().size(); i++) {
        String number = Integer.toString(i + 1);
        values.addAll(values(list.items().get(i), longer(steps, number), below(field, number)));
      }
    }
    return values;
  }

  private static String below(String field, String name) {
    return field.isEmpty() ? name : field + "." + name;
  }

  private static List<String> longer(List<String> steps, String last) {
    List<String> longer = new ArrayList<>(steps);
    longer.add(last);
    return longer;
  }

  private static Optional<String> text(Node node, String field) {
    return node instanceof MapNode map ? map.findText(field) : Optional.empty();
  }
}
