package rillwright.cli.file.change;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;

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
    Optional<Node> level = pond(before, pond).flatMap(map -> map.findNode("level"));
    boolean countsFromTheLevel =
        pond(after, pond)
            .flatMap(map -> map.findMap("shape"))
            .filter(dug -> dug.find("top").isEmpty())
            .isPresent();
    if (level.isEmpty() || !countsFromTheLevel || isAsBefore(level.get(), after, pond)) {
      return after;
    }
    Change top = new Change(new Address(List.of("points", pond, "shape", "top")), level.get());
    return top.in(after);
  }

  private static boolean isAsBefore(Node level, MapNode after, String pond) {
    Optional<Node> now = pond(after, pond).flatMap(map -> map.findNode("level"));
    return level instanceof Scalar was
        && now.filter(it -> it instanceof Scalar is && is.text().equals(was.text())).isPresent();
  }

  private static Optional<MapNode> pond(MapNode tree, String name) {
    return tree.findMap("points").flatMap(points -> points.findMap(name));
  }
}
