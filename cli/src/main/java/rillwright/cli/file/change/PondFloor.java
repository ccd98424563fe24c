package rillwright.cli.file.change;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;

/**
 * The floor of a pond stays where it was dug when its level is changed: a shape by length, width
 * and depth counts from the level unless it says its top, so the level that the file had becomes
 * its top.
 */
final class PondFloor {
  private PondFloor() {}

  /** A changed tree with the floor kept; as it is where the change is of something else. */
  static MapNode kept(Address changed, MapNode before, MapNode after) {
    List<String> steps = changed.steps();
    if (steps.size() != 3 || !steps.get(0).equals("points") || !steps.get(2).equals("level")) {
      return after;
    }
    String pond = steps.get(1);
    Optional<Node> level = find(before, List.of("points", pond, "level"));
    Optional<Node> shape = find(after, List.of("points", pond, "shape"));
    boolean countsFromTheLevel =
        shape.isPresent() && shape.get() instanceof MapNode dug && dug.find("top").isEmpty();
    if (level.isEmpty() || !countsFromTheLevel) {
      return after;
    }
    Change top = new Change(new Address(List.of("points", pond, "shape", "top")), level.get());
    return top.in(after);
  }

  private static Optional<Node> find(MapNode tree, List<String> steps) {
    Optional<Node> node = Optional.of(tree);
    for (String step : steps) {
      node =
          node.filter(MapNode.class::isInstance)
              .flatMap(map -> ((MapNode) map).find(step))
              .map(Entry::value);
    }
    return node;
  }
}
