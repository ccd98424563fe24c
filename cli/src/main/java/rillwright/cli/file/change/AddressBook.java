package rillwright.cli.file.change;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;

/** Where each value of a file stands, in the words with which a change would name it. */
public final class AddressBook {
  private final IdentityHashMap<Scalar, Address> addresses = new IdentityHashMap<>();
  private final Map<String, String> texts = new LinkedHashMap<>();

  /** The addresses of all values of a tree. */
  public AddressBook(MapNode tree) {
    enter(tree, new Address(List.of()));
  }

  /**
   * The address of a value: {@code lines.intake.skimmer.clogged}; empty if it is not in the tree.
   *
   * @param value this very piece, not one like it
   */
  public Optional<String> find(Scalar value) {
    return Optional.ofNullable(addresses.get(value)).map(Address::text);
  }

  /** The section in which a value stands; empty if it is not in the tree. */
  public Optional<String> findSection(Scalar value) {
    return Optional.ofNullable(addresses.get(value)).map(address -> address.steps().get(0));
  }

  /** Every value as written, by its address, in the order of the file. */
  public Map<String, String> textByAddress() {
    return Collections.unmodifiableMap(texts);
  }

  private void enter(Node node, Address address) {
    if (node instanceof Scalar value) {
      addresses.put(value, address);
      texts.put(address.text(), value.text());
    } else if (node instanceof MapNode map) {
      for (Entry entry : map.entries()) {
        boolean isParts = isLine(address.steps()) && entry.key().equals(Placement.PARTS);
        if (isParts && entry.value() instanceof ListNode parts) {
          enterParts(parts, address);
        } else {
          enter(entry.value(), address.below(entry.key()));
        }
      }
    } else if (node instanceof ListNode list) {
      for (int i = 0; i < list.items().size(); i++) {
        enter(list.items().get(i), address.below(Integer.toString(i + 1)));
      }
    }
  }

  private static boolean isLine(List<String> steps) {
    return steps.size() == 2 && steps.get(0).equals(Placement.LINES);
  }

  private void enterParts(ListNode parts, Address line) {
    for (PartStep.Written part : PartStep.listIn(parts.items())) {
      Address address = line.below(part.step());
      enter(part.entry().value(), part.bareField().map(address::below).orElse(address));
    }
  }
}
