package rillwright.cli.file.outline;

import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;

/** Checks the sections {@code signs} and {@code conditions}. */
public final class LooseOutline {
  private LooseOutline() {}

  /** Notes what is wrong with them in a project. */
  public static void check(Fields root) {
    SignsReader.read(root);
    Optional<Node> conditions = root.findNode("conditions");
    if (conditions.isPresent() && conditions.get() instanceof Scalar scalar) {
      root.fault("conditions", "expected fields or a list, found " + scalar.words());
    }
  }
}
