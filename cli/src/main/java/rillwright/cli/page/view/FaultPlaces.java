package rillwright.cli.page.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;

/** Which value or piece of a job each fault is about, by where it stands in the text. */
final class FaultPlaces {
  private final Map<List<Integer>, String> addresses = new HashMap<>();
  private final Map<String, List<String>> byAddress = new LinkedHashMap<>();

  private FaultPlaces() {}

  /** Finds it for all faults of a text. */
  static FaultPlaces of(Optional<MapNode> tree, List<Fault> faults) {
    FaultPlaces places = new FaultPlaces();
    tree.ifPresent(root -> places.enter(root, new Address(List.of())));
    for (Fault fault : faults) {
      String address = places.addresses.getOrDefault(List.of(fault.line(), fault.column()), "");
      places.byAddress.computeIfAbsent(address, it -> new ArrayList<>()).add(fault.message());
    }
    return places;
  }

  /** What is wrong with a value or piece itself, in the readers' words. */
  List<String> at(String address) {
    return byAddress.getOrDefault(address, List.of());
  }

  /** What is wrong anywhere below an address. */
  List<String> below(String address) {
    return byAddress.entrySet().stream()
        .filter(it -> it.getKey().equals(address) || it.getKey().startsWith(address + "."))
        .flatMap(it -> it.getValue().stream())
        .toList();
  }

  /** All of it by address; what has no place in the text under an empty one. */
  Map<String, List<String>> all() {
    return byAddress;
  }

  private void enter(Node node, Address address) {
    put(node.place(), address);
    if (node instanceof MapNode map) {
      for (Entry entry : map.entries()) {
        Address below = address.below(entry.key());
        List<String> steps = address.steps();
        boolean isParts =
            steps.size() == 2 && steps.get(0).equals("lines") && entry.key().equals("parts");
        if (isParts && entry.value() instanceof ListNode parts) {
          enterParts(parts, address);
        } else {
          put(entry.keyPlace(), below);
          enter(entry.value(), below);
        }
      }
    } else if (node instanceof ListNode list) {
      for (int i = 0; i < list.items().size(); i++) {
        enter(list.items().get(i), address.below(Integer.toString(i + 1)));
      }
    }
  }

  private void enterParts(ListNode parts, Address line) {
    put(parts.place(), line);
    parts.items().forEach(item -> put(item.place(), line));
    for (PartStep.Written part : PartStep.listIn(parts.items())) {
      Address address = line.below(part.step());
      put(part.entry().keyPlace(), address);
      enter(part.entry().value(), part.bareField().map(address::below).orElse(address));
    }
  }

  private void put(Place place, Address address) {
    if (!place.isWhole() && !address.steps().isEmpty()) {
      addresses.put(List.of(place.line(), place.column()), address.text());
    }
  }
}
