package rillwright.cli.file.field;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;

/**
 * What stands below a field where a map or a list belongs.
 *
 * @param name of the field, for messages
 * @param node what is written there; empty if the field is not there
 */
record Nesting(String name, Optional<Node> node, Ledger ledger) {

  private void fault(String belongs, String instead) {
    ledger.fault(node.orElseThrow().place(), name + ": " + belongs + instead);
  }

  /**
   * The map; empty if there is none or, with the fault noted, another thing.
   *
   * @param example to tell with the fault, after "expected fields"
   */
  Optional<MapNode> map(String example) {
    if (node.isPresent() && !(node.get() instanceof MapNode)) {
      fault("expected fields" + example, ", found " + node.get().words());
    }
    return node.filter(MapNode.class::isInstance).map(MapNode.class::cast);
  }

  /** The items of the list; none if there is none or, with the fault noted, another thing. */
  List<Node> items() {
    if (node.isPresent() && !(node.get() instanceof ListNode)) {
      fault("expected a list", SetElsewhere.insteadOfList(node.get()));
    }
    return node.map(n -> n instanceof ListNode list ? list.items() : List.<Node>of())
        .orElse(List.of());
  }

  /** The rows of a list of maps; other items are faults. */
  List<Fields> rows(Collection<String> fieldsBelow) {
    List<Fields> rows = new ArrayList<>();
    int number = 0;
    for (Node item : items()) {
      number++;
      String row = name + " " + number;
      if (item instanceof MapNode map) {
        rows.add(Fields.of(map, row, ledger, fieldsBelow));
      } else {
        ledger.fault(item.place(), row + ": expected fields, found " + item.words());
      }
    }
    return rows;
  }
}
