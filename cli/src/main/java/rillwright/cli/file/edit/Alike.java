package rillwright.cli.file.edit;

import java.util.List;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;

/** Whether two trees say the same, wherever and however it is written. */
final class Alike {
  private Alike() {}

  /** Whether names, values and their order are the same. */
  static boolean say(Node one, Node other) {
    if (one == other) {
      return true;
    }
    if (one instanceof Scalar a && other instanceof Scalar b) {
      return a.text().equals(b.text()) && a.isNothing() == b.isNothing();
    }
    if (one instanceof ListNode a && other instanceof ListNode b) {
      return sayAll(a.items(), b.items());
    }
    return one instanceof MapNode a
        && other instanceof MapNode b
        && a.keys().equals(b.keys())
        && sayAll(
            a.entries().stream().map(Entry::value).toList(),
            b.entries().stream().map(Entry::value).toList());
  }

  private static boolean sayAll(List<Node> some, List<Node> others) {
    if (some.size() != others.size()) {
      return false;
    }
    for (int i = 0; i < some.size(); i++) {
      if (!say(some.get(i), others.get(i))) {
        return false;
      }
    }
    return true;
  }

  /** Whether a map or list has nothing in it. */
  static boolean isEmpty(Node node) {
    return (node instanceof MapNode map && map.entries().isEmpty())
        || (node instanceof ListNode list && list.items().isEmpty());
  }
}
