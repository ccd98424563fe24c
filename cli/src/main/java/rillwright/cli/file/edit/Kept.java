package rillwright.cli.file.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;

/** Which pieces of a map or list are still there in a changed one: known by name, else by place. */
final class Kept {
  private Kept() {}

  /** For each entry of the changed map its number among those before, or -1 where it is new. */
  static List<Integer> entries(MapNode before, MapNode after) {
    List<Integer> found = new ArrayList<>();
    for (Entry entry : after.entries()) {
      found.add(before.keys().indexOf(entry.key()));
    }
    for (int i = 0; i < found.size(); i++) {
      if (found.get(i) < 0) {
        found.set(i, renamed(before, after.entries().get(i), found));
      }
    }
    return found;
  }

  private static int renamed(MapNode before, Entry entry, List<Integer> taken) {
    for (int i = 0; i < before.entries().size(); i++) {
      if (!taken.contains(i) && before.entries().get(i).keyPlace().equals(entry.keyPlace())) {
        return i;
      }
    }
    return -1;
  }

  /** For each item of the changed list its number among those before, or -1 where it is new. */
  static List<Integer> items(ListNode before, ListNode after) {
    List<Integer> found = new ArrayList<>(Collections.nCopies(after.items().size(), -1));
    for (int i = 0; i < found.size(); i++) {
      found.set(i, placed(before, after.items().get(i), found));
    }
    boolean isSameSize = before.items().size() == found.size();
    for (int i = 0; isSameSize && i < found.size(); i++) {
      if (found.get(i) < 0 && !found.contains(i)) {
        found.set(i, i);
      }
    }
    return found;
  }

  private static int placed(ListNode before, Node item, List<Integer> taken) {
    for (int i = 0; i < before.items().size(); i++) {
      if (!taken.contains(i) && before.items().get(i).place().equals(item.place())) {
        return i;
      }
    }
    return -1;
  }
}
