package rillwright.cli.file.change;

import java.util.List;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;

/**
 * A step of an address that names a part of a line, such as {@code valve 2}: the second valve.
 *
 * @param kind of part
 * @param number among those of its kind, from 1
 */
public record PartStep(String kind, int number) {

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

  /** The number of the part among the items of a line's list, from 0; -1 if it is not there. */
  public int in(List<Node> items) {
    int met = 0;
    for (int i = 0; i < items.size(); i++) {
      boolean isKind =
          items.get(i) instanceof MapNode item
              && !item.entries().isEmpty()
              && item.entries().get(0).key().equals(kind);
      if (isKind && ++met == number) {
        return i;
      }
    }
    return -1;
  }
}
