package rillwright.cli.file.pump;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Scalar;

/** The paths of data sheets that a project's tree names. */
public final class NamedSheets {
  private static final String PUMPS = "pumps";
  private static final String CONDITIONS = "conditions";

  private NamedSheets() {}

  /** The paths as written, those in changes of conditions last. */
  public static List<String> in(MapNode tree) {
    List<String> paths = new ArrayList<>();
    addFrom(tree, paths);
    for (Entry condition : below(tree, CONDITIONS)) {
      if (condition.value() instanceof MapNode changes) {
        addFrom(changes, paths);
      }
    }
    return paths;
  }

  private static void addFrom(MapNode tree, List<String> paths) {
    for (Entry pump : below(tree, PUMPS)) {
      if (pump.value() instanceof Scalar path && !path.isNothing()) {
        paths.add(path.text());
      }
    }
  }

  private static List<Entry> below(MapNode tree, String section) {
    return tree.findMap(section).map(MapNode::entries).orElse(List.of());
  }
}
