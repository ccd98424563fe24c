package rillwright.cli.file.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.line.LinesReader;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.file.part.Shorthand;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;

/**
 * Puts a value where an address says.
 *
 * @param address where
 * @param value what
 * @param places where each step of the address is written
 */
record Placement(Address address, Node value, List<Place> places) {
  static final String LINES = "lines";
  static final String PARTS = "parts";
  private static final String PUMPS = "pumps";

  /** Before a kind of part: one more of it, at the end of its line. */
  private static final String NEW = "new ";

  /** Sections whose second step is a name that must exist. */
  private static final List<String> NAMED = List.of("points", LINES, PUMPS, "streams");

  MapNode in(MapNode tree) {
    return inMap(tree, 0);
  }

  private String step(int index) {
    return address.steps().get(index);
  }

  private boolean isLast(int index) {
    return index == address.steps().size() - 1;
  }

  private boolean isInside(String section, int depth) {
    return depth > 0 && step(0).equals(section);
  }

  /** What is wrong with a step of the address. */
  private InvalidInput wrong(int index, String message) {
    return new InvalidInput(places.get(index), message);
  }

  private MapNode inMap(MapNode map, int index) {
    String name = step(index);
    if (index == 2 && isInside(LINES, index) && !LinesReader.fields().contains(name)) {
      return inPart(map, index);
    }
    Optional<Entry> there = map.find(name);
    boolean isNewSheet = isInside(PUMPS, index) && isLast(index);
    if (there.isEmpty() && index == 1 && NAMED.contains(step(0)) && !isNewSheet) {
      throw wrong(
          index,
          "there is no "
              + PlainText.quoted(name)
              + " in the section "
              + PlainText.quoted(step(0))
              + Choices.hint(name, map.keys()));
    }
    Node before = there.map(Entry::value).orElse(nothing());
    Place keyPlace = there.map(Entry::keyPlace).orElse(places.get(index));
    return map.with(new Entry(name, keyPlace, changed(before, index, Optional.empty())));
  }

  private Scalar nothing() {
    return new Scalar("", Scalar.Form.NOTHING, value.place());
  }

  /**
   * What takes the place of a node that a step of the address leads to.
   *
   * @param bareField the field that it stands for if it is a bare value
   */
  private Node changed(Node before, int index, Optional<String> bareField) {
    if (isLast(index)) {
      return value;
    }
    if (before instanceof MapNode map) {
      return inMap(map, index + 1);
    }
    if (before instanceof ListNode list && rowOf(list, index + 1) >= 0) {
      List<Node> rows = new ArrayList<>(list.items());
      int row = rowOf(list, index + 1);
      rows.set(row, changed(rows.get(row), index + 1, Optional.empty()));
      return new ListNode(rows, list.place());
    }
    if (before instanceof Scalar scalar && scalar.isNothing()) {
      return inMap(new MapNode(List.of(), value.place()), index + 1);
    }
    if (before instanceof Scalar scalar && bareField.isPresent()) {
      if (bareField.get().equals(step(index + 1)) && isLast(index + 1)) {
        return value;
      }
      Entry bare = new Entry(bareField.get(), scalar.place(), scalar);
      return inMap(new MapNode(List.of(bare), scalar.place()), index + 1);
    }
    throw wrong(
        index + 1,
        before instanceof ListNode list && PartStep.isWhole(step(index + 1))
            ? PlainText.quoted(step(index))
                + " has pieces 1 to "
                + list.items().size()
                + " and no "
                + PlainText.quoted(step(index + 1))
            : PlainText.quoted(step(index))
                + " is "
                + before.words()
                + " and has no field "
                + PlainText.quoted(step(index + 1)));
  }

  /** Which row of a list a step means, from 0, where it is a number from 1 on; else below 0. */
  private int rowOf(ListNode list, int index) {
    String number = step(index);
    boolean isNumber = number.length() <= 4 && PartStep.isWhole(number);
    int row = isNumber ? Integer.parseInt(number) - 1 : -1;
    return row < list.items().size() ? row : -1;
  }

  /** In a line, where the step names a kind of part. */
  private MapNode inPart(MapNode line, int index) {
    Entry parts =
        line.find(PARTS)
            .filter(entry -> entry.value() instanceof ListNode)
            .orElseThrow(() -> noSuchPart(List.of(), index));
    List<Node> items = new ArrayList<>(((ListNode) parts.value()).items());
    if (step(index).startsWith(NEW)) {
      return withNewPart(line, parts, index);
    }
    int number = PartStep.of(step(index)).in(items);
    if (number < 0) {
      throw noSuchPart(kindsIn(items), index);
    }
    MapNode item = (MapNode) items.get(number);
    Entry part = item.entries().get(0);
    Node changed = changed(part.value(), index, Shorthand.fieldOf(part.key()));
    items.set(number, item.with(new Entry(part.key(), part.keyPlace(), changed)));
    return line.with(
        new Entry(PARTS, parts.keyPlace(), new ListNode(items, parts.value().place())));
  }

  private static List<String> kindsIn(List<Node> items) {
    return items.stream()
        .filter(item -> item instanceof MapNode map && !map.entries().isEmpty())
        .map(item -> ((MapNode) item).entries().get(0).key())
        .toList();
  }

  private MapNode withNewPart(MapNode line, Entry parts, int index) {
    String kind = step(index).substring(NEW.length()).strip();
    Entry part =
        new Entry(kind, places.get(index), changed(nothing(), index, Shorthand.fieldOf(kind)));
    List<Node> items = new ArrayList<>(((ListNode) parts.value()).items());
    items.add(new MapNode(List.of(part), places.get(index)));
    return line.with(
        new Entry(PARTS, parts.keyPlace(), new ListNode(items, parts.value().place())));
  }

  private InvalidInput noSuchPart(List<String> kinds, int index) {
    List<String> choices = new ArrayList<>(kinds.stream().distinct().toList());
    choices.addAll(LinesReader.fields());
    return wrong(
        index,
        "line "
            + PlainText.quoted(step(1))
            + " has no "
            + PlainText.quoted(step(index))
            + Choices.hint(step(index), choices));
  }
}
