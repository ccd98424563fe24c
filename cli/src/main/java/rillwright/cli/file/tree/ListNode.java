package rillwright.cli.file.tree;

import java.util.List;
import rillwright.cli.file.fault.Place;

/**
 * A list.
 *
 * @param items in order; copied
 * @param place where it begins
 */
public record ListNode(List<Node> items, Place place) implements Node {
  public ListNode {
    items = List.copyOf(items);
  }

  @Override
  public String words() {
    return "a list";
  }
}
