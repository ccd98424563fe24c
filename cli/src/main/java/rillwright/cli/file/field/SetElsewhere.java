package rillwright.cli.file.field;

import java.util.List;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;

/** Faults that come from a value that was set from elsewhere, such as the command line. */
public final class SetElsewhere {
  private SetElsewhere() {}

  /**
   * Notes that some fields do not go together: at the one that was set from elsewhere, where there
   * is one, else where they all stand.
   */
  public static void fault(Fields whole, List<String> together, String message) {
    Place place =
        together.stream()
            .flatMap(field -> whole.findNode(field).stream())
            .map(Node::place)
            .filter(written -> !written.source().equals(whole.place().source()))
            .findFirst()
            .orElse(whole.place());
    whole.ledger().fault(place, whole.what() + ": " + message);
  }

  /** What to say after "expected a list". */
  static String insteadOfList(Node there) {
    boolean set = there instanceof Scalar && there.place().isWhole();
    return set ? ", and a list cannot be set; write it into the file" : ", found " + there.words();
  }
}
