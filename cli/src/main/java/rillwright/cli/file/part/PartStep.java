package rillwright.cli.file.part;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;

/**
 * A step of an address that names a part of a line, such as {@code valve 2}: the second valve.
 *
 * @param kind of part
 * @param number among those of its kind, from 1
 */
public record PartStep(String kind, int number) {

  /**
   * A part as a line's list has it.
   *
   * @param position among the items of the list, from 0
   * @param step of its address
   * @param entry its kind and what is said about it
   */
  public record Written(int position, String step, Entry entry) {

    /** The field that a bare value stands for; empty if its fields are written out. */
    public Optional<String> bareField() {
      return entry.value() instanceof Scalar ? Shorthand.fieldOf(entry.key()) : Optional.empty();
    }
  }

  /** Whether a text is a whole number. */
  public static boolean isWhole(String text) {
    return !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  /** The step that a text is. */
  public static PartStep of(String step) {
    int space = step.lastIndexOf(' ');
    String ending = step.substring(space + 1);
    boolean counted = space > 0 && ending.length() <= 4 && isWhole(ending);
    return counted
        ? new PartStep(step.substring(0, space).strip(), Integer.parseInt(ending))
        : new PartStep(step, 1);
  }

  /** The steps to all parts of a line by their kinds: {@code valve, run, valve 2}. */
  public static List<String> stepsOf(List<String> kinds) {
    Map<String, Integer> counts = new HashMap<>();
    List<String> steps = new ArrayList<>();
    for (String kind : kinds) {
      int count = counts.merge(kind, 1, Integer::sum);
      steps.add(count == 1 ? kind : kind + " " + count);
    }
    return steps;
  }

  /** The parts among the items of a line's list; what is no part is passed over. */
  public static List<Written> listIn(List<Node> items) {
    List<Integer> positions = new ArrayList<>();
    List<Entry> parts = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      if (items.get(i) instanceof MapNode item && !item.entries().isEmpty()) {
        positions.add(i);
        parts.add(item.entries().get(0));
      }
    }
    List<String> steps = stepsOf(parts.stream().map(Entry::key).toList());
    List<Written> written = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      written.add(new Written(positions.get(i), steps.get(i), parts.get(i)));
    }
    return written;
  }

  /** The number of the part among the items of a line's list, from 0; -1 if it is not there. */
  public int in(List<Node> items) {
    String step = number == 1 ? kind : kind + " " + number;
    return listIn(items).stream()
        .filter(part -> part.step().equals(step))
        .mapToInt(Written::position)
        .findFirst()
        .orElse(-1);
  }
}
