package rillwright.cli.study.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rillwright.cli.file.Project;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.change.AddressBook;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;

/**
 * What two files say differently in one place.
 *
 * @param address of the value: {@code lines.supply.pipe.size}
 * @param a as the first file writes it; empty if it does not
 * @param b as the second file writes it; empty if it does not
 */
public record Entered(String address, Optional<String> a, Optional<String> b) {

  /** What differs, in the order of the first file, what only the second says last. */
  public static List<Entered> listBetween(Project a, Project b) {
    Map<String, String> first = values(a);
    Map<String, String> second = values(b);
    Set<String> addresses = new LinkedHashSet<>(first.keySet());
    addresses.addAll(second.keySet());
    List<Entered> differences = new ArrayList<>();
    for (String address : addresses) {
      Entered entered =
          new Entered(
              address,
              Optional.ofNullable(first.get(address)),
              Optional.ofNullable(second.get(address)));
      if (!entered.a.equals(entered.b)) {
        differences.add(entered);
      }
    }
    return differences;
  }

  /** Values by their addresses, with the kinds of the parts of each line in their order. */
  private static Map<String, String> values(Project project) {
    Map<String, String> values =
        new LinkedHashMap<>(new AddressBook(project.tree()).textByAddress());
    for (Line line : project.network().lines()) {
      List<String> kinds = line.parts().stream().map(Part::kind).toList();
      Address parts = new Address(List.of("lines", line.name().value(), "parts"));
      values.put(parts.text(), String.join(", ", kinds));
    }
    return values;
  }
}
