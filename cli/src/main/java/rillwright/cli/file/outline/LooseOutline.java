package rillwright.cli.file.outline;

import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;

/** Checks the sections {@code signs}, {@code evaporation} and {@code conditions}. */
public final class LooseOutline {
  private LooseOutline() {}

  /** Notes what is wrong with them in a project. */
  public static void check(Fields root) {
    SignsReader.read(root);
    Optional<Node> conditions = root.findNode("conditions");
    if (conditions.isPresent() && conditions.get() instanceof Scalar scalar) {
      root.fault("conditions", "fields or a list belong here, not " + scalar.words());
    }
    Optional<Node> evaporation = root.findNode("evaporation");
    if (evaporation.isPresent() && evaporation.get() instanceof Scalar) {
      root.find("evaporation", Measure.SPEED, Range.NOT_NEGATIVE);
    }
  }
}
