package rillwright.cli.file.outline;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;

/** Checks the sections {@code signs} and {@code conditions}. */
public final class LooseOutline {
  private LooseOutline() {}

  /** Notes what is wrong with them in a project. */
  public static void check(Fields root) {
    for (String section : List.of("signs", "conditions")) {
      Optional<Node> node = root.findNode(section);
      if (node.isPresent() && node.get() instanceof Scalar scalar) {
        root.fault(section, "fields or a list belong here, not " + scalar.words());
      }
    }
  }
}
