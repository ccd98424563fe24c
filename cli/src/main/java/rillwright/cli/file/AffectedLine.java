package rillwright.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.solver.network.Line;

/**
 * As much of a line as must be read again when values in it are drawn. Where they stand in its
 * parts or in what it says of its pipe's wall and change no bore, these are the parts that hold
 * them, and its runs, in whose bore the others stand; else it is the whole line.
 *
 * @param entry the line, with no more parts than must be read
 * @param places of these parts among all of the line, from 0; empty if the line is read as a whole
 */
record AffectedLine(Entry entry, Optional<List<Integer>> places) {
  private static final String PARTS = "parts";

  /** Fields that change a bore. */
  private static final Set<String> BORE = Set.of("inside", "deposit", "size");

  private static final String PIPE = "run";

  /** What it says besides a bore is read by runs alone. */
  private static final String WALL = "pipe";

  /**
   * What of a line must be read again.
   *
   * @param isDrawn whether a piece of the file is a drawn value
   */
  static AffectedLine of(Entry line, Predicate<Node> isDrawn) {
    AffectedLine whole = new AffectedLine(line, Optional.empty());
    if (!(line.value() instanceof MapNode map)) {
      return whole;
    }
    for (Entry field : map.entries()) {
      boolean isParts = field.key().equals(PARTS) && field.value() instanceof ListNode;
      boolean changesAll =
          field.key().equals(WALL)
              ? holdsBore(field.value(), isDrawn)
              : holds(field.value(), isDrawn);
      if (!isParts && changesAll) {
        return whole;
      }
    }
    Entry parts = map.find(PARTS).orElseThrow();
    List<Node> kept = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    List<Node> items = ((ListNode) parts.value()).items();
    for (int i = 0; i < items.size(); i++) {
      Entry part = ((MapNode) items.get(i)).entries().get(0);
      if (holdsBore(part.value(), isDrawn)) {
        return whole;
      }
      if (part.key().equals(PIPE) || holds(part.value(), isDrawn)) {
        kept.add(items.get(i));
        places.add(i);
      }
    }
    ListNode fewer = new ListNode(kept, parts.value().place());
    MapNode reduced = map.with(new Entry(PARTS, parts.keyPlace(), fewer));
    return new AffectedLine(new Entry(line.key(), line.keyPlace(), reduced), Optional.of(places));
  }

  /** Whether a piece of a file holds a drawn value. */
  static boolean holds(Node node, Predicate<Node> isDrawn) {
    if (node instanceof MapNode map) {
      return map.entries().stream().anyMatch(entry -> holds(entry.value(), isDrawn));
    }
    if (node instanceof ListNode list) {
      return list.items().stream().anyMatch(item -> holds(item, isDrawn));
    }
    return isDrawn.test(node);
  }

  private static boolean holdsBore(Node part, Predicate<Node> isDrawn) {
    return part instanceof MapNode map
        && map.entries().stream()
            .anyMatch(
                field ->
                    BORE.contains(field.key())
                        ? holds(field.value(), isDrawn)
                        : holdsBore(field.value(), isDrawn));
  }

  /**
   * The whole line.
   *
   * @param read what was read of this
   * @param middle the line with the middle of every quantity
   */
  Line complete(Line read, Line middle) {
    if (places.isEmpty()) {
      return read;
    }
    Line line = middle;
    for (int i = 0; i < places.get().size(); i++) {
      line = line.withPart(places.get().get(i), read.parts().get(i));
    }
    return line;
  }
}
