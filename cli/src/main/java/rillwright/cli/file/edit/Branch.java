package rillwright.cli.file.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.line.LinesReader;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;

/** What an address leads to in a tree, and the tree with something else there. */
final class Branch {
  private static final String LINES = "lines";
  private static final String PARTS = "parts";

  /** Sections that no project is without. */
  private static final List<String> NEEDED = List.of("points", LINES);

  private final MapNode tree;
  private final List<String> steps;
  private final Place place;

  private Branch(MapNode tree, List<String> steps, Place place) {
    this.tree = tree;
    this.steps = steps;
    this.place = place;
  }

  /** That of an address: {@code lines.supply.valve 2}. */
  static Branch of(MapNode tree, String address) {
    Place place = Place.whole("edit of \"" + address + "\"");
    return new Branch(tree, Address.of(address).steps(), place);
  }

  /** The tree with something where nothing is yet. */
  MapNode added(Node value) {
    return with(
        there -> {
          if (there.filter(node -> !isNothing(node)).isPresent()) {
            throw wrong("this is there already; set its value, or remove it first");
          }
          return Optional.of(value);
        });
  }

  /** The tree without what is there; a section of which nothing is left goes, too. */
  MapNode removed() {
    MapNode left =
        with(
            there -> {
              if (there.isEmpty()) {
                throw nothingThere();
              }
              return Optional.empty();
            });
    String section = steps.get(0);
    boolean isEmpty = left.find(section).filter(entry -> Alike.isEmpty(entry.value())).isPresent();
    return isEmpty && !NEEDED.contains(section)
        ? new Branch(left, List.of(section), place).with(all -> Optional.empty())
        : left;
  }

  /** The tree with one more item in the list that is there. */
  MapNode inserted(int position, Node item) {
    return with(
        there -> {
          List<Node> items = new ArrayList<>(there.map(this::items).orElse(List.of()));
          requirePosition(position, items.size() + 1);
          items.add(position - 1, item);
          return Optional.of(new ListNode(items, there.map(Node::place).orElse(place)));
        });
  }

  /** The tree with an item of the list that is there at another position. */
  MapNode moved(int from, int to) {
    return with(
        there -> {
          Node list = there.orElseThrow(this::nothingThere);
          List<Node> items = new ArrayList<>(items(list));
          requirePosition(from, items.size());
          requirePosition(to, items.size());
          items.add(to - 1, items.remove(from - 1));
          return Optional.of(new ListNode(items, list.place()));
        });
  }

  private List<Node> items(Node node) {
    if (node instanceof ListNode list) {
      return list.items();
    }
    if (isNothing(node)) {
      return List.of();
    }
    throw wrong("this is " + node.words() + ", not a list");
  }

  private void requirePosition(int position, int last) {
    if (position < 1 || position > last) {
      throw wrong("there is no position " + position + " here; it may be 1 to " + last);
    }
  }

  private MapNode with(UnaryOperator<Optional<Node>> change) {
    return (MapNode) changed(Optional.of(tree), 0, change).orElseThrow();
  }

  private Optional<Node> changed(
      Optional<Node> there, int index, UnaryOperator<Optional<Node>> change) {
    if (index == steps.size()) {
      return change.apply(there);
    }
    Node node = there.filter(it -> !isNothing(it)).orElse(new MapNode(List.of(), place));
    if (node instanceof MapNode map) {
      boolean isPart =
          index == 2
              && steps.get(0).equals(LINES)
              && !LinesReader.fields().contains(steps.get(index));
      return Optional.of(isPart ? inPart(map, index, change) : inMap(map, index, change));
    }
    if (node instanceof ListNode list) {
      List<Node> items = new ArrayList<>(list.items());
      int row = row(items, index);
      changed(Optional.of(items.get(row)), index + 1, change)
          .ifPresentOrElse(item -> items.set(row, item), () -> items.remove(row));
      return Optional.of(new ListNode(items, list.place()));
    }
    throw wrong(
        PlainText.quoted(steps.get(index - 1))
            + " is "
            + node.words()
            + " and has no field "
            + PlainText.quoted(steps.get(index)));
  }

  private MapNode inMap(MapNode map, int index, UnaryOperator<Optional<Node>> change) {
    String name = steps.get(index);
    Optional<Entry> entry = map.find(name);
    boolean isLast = index == steps.size() - 1;
    if (entry.isEmpty() && !isLast && index > 0) {
      throw wrong("there is no " + PlainText.quoted(name) + Choices.hint(name, map.keys()));
    }
    Optional<Node> value = changed(entry.map(Entry::value), index + 1, change);
    if (value.isEmpty()) {
      List<Entry> left = new ArrayList<>(map.entries());
      entry.ifPresent(left::remove);
      return new MapNode(left, map.place());
    }
    return map.with(new Entry(name, entry.map(Entry::keyPlace).orElse(place), value.get()));
  }

  private MapNode inPart(MapNode line, int index, UnaryOperator<Optional<Node>> change) {
    PartStep wanted = PartStep.of(steps.get(index));
    Entry parts = line.find(PARTS).orElseThrow(this::nothingThere);
    List<Node> items = new ArrayList<>(items(parts.value()));
    int item = wanted.in(items);
    if (item < 0) {
      throw nothingThere();
    }
    MapNode whole = (MapNode) items.get(item);
    Entry part = whole.entries().get(0);
    changed(Optional.of(part.value()), index + 1, change)
        .ifPresentOrElse(
            value -> items.set(item, whole.with(new Entry(part.key(), part.keyPlace(), value))),
            () -> items.remove(item));
    return line.with(
        new Entry(PARTS, parts.keyPlace(), new ListNode(items, parts.value().place())));
  }

  private int row(List<Node> items, int index) {
    String step = steps.get(index);
    int row = step.length() <= 4 && PartStep.isWhole(step) ? Integer.parseInt(step) - 1 : -1;
    if (row < 0 || row >= items.size()) {
      throw wrong("there is no " + PlainText.quoted(step) + "; rows are 1 to " + items.size());
    }
    return row;
  }

  private static boolean isNothing(Node node) {
    return node instanceof Scalar scalar && scalar.isNothing();
  }

  private InvalidInput nothingThere() {
    return wrong("nothing in the file has this address");
  }

  private InvalidInput wrong(String message) {
    return new InvalidInput(place, message);
  }
}
