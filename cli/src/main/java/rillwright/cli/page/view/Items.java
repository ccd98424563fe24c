package rillwright.cli.page.view;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
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
      if (point.value().findText("kind").equals(Optional.of("basin"))) {
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
    Address address = new Address(List.of(POINTS, name));
    found.add(
        new Item(
            Kind.POINT,
            address.text(),
            name,
            point.get().value().findText("kind").orElse("point"),
            0,
            values(point.get().value(), address, ""),
            List.of()));
    for (Entry line : lines.entries()) {
      if (line.value().findText("from").equals(Optional.of(name))) {
        line(line);
        line.value().findText("to").ifPresent(this::from);
      }
    }
  }

  private void line(Entry line) {
    if (!met.add(LINES + line.key())) {
      return;
    }
    Address address = new Address(List.of(LINES, line.key()));
    List<Value> values = new ArrayList<>();
    List<Item> parts = new ArrayList<>();
    if (line.value() instanceof MapNode map) {
      for (Entry entry : map.entries()) {
        if (entry.key().equals("parts") && entry.value() instanceof ListNode list) {
          parts.addAll(parts(list, address));
        } else {
          values.addAll(values(entry.value(), address.below(entry.key()), entry.key()));
        }
      }
    }
    found.add(new Item(Kind.LINE, address.text(), line.key(), "line", 0, values, parts));
  }

  private static List<Item> parts(ListNode list, Address line) {
    List<Item> parts = new ArrayList<>();
    for (PartStep.Written part : PartStep.listIn(list.items())) {
      Address address = line.below(part.step());
      Node said = part.entry().value();
      List<Value> values =
          part.bareField()
              .map(bare -> values(said, address.below(bare), bare))
              .orElseGet(() -> values(said, address, ""));
      parts.add(
          new Item(
              Kind.PART,
              address.text(),
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
        Address address = new Address(List.of(entry.key()));
        List<Value> values = values(entry.value(), address, entry.key());
        sections.add(new Item(Kind.SECTION, address.text(), entry.key(), "", 0, values, List.of()));
      }
    }
    return sections;
  }

  private static List<Value> values(Node node, Address address, String field) {
    List<Value> values = new ArrayList<>();
    if (node instanceof Scalar scalar) {
      values.add(new Value(address.text(), field, scalar.text()));
    } else if (node instanceof MapNode map) {
      for (Entry entry : map.entries()) {
        values.addAll(values(entry.value(), address.below(entry.key()), below(field, entry.key())));
      }
    } else if (node instanceof ListNode list) {
      for (int i = 0; i < list.items().size(); i++) {
        String number = Integer.toString(i + 1);
        values.addAll(values(list.items().get(i), address.below(number), below(field, number)));
      }
    }
    return values;
  }

  private static String below(String field, String name) {
    return field.isEmpty() ? name : field + "." + name;
  }
}
