package rillwright.cli.page.desk;

import java.util.List;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.tree.MapNode;

/** Where the pieces of a job stand on the page, by the addresses that {@code --set} takes. */
public final class Places {
  private Places() {}

  /** An address of its steps. */
  public static String text(List<String> steps) {
    return new Address(steps).text();
  }

  /** An address for people: {@code lines.supply.pipe.size} is "supply: pipe size". */
  public static String words(String address) {
    List<String> steps = Address.of(address).steps();
    boolean isPiece = List.of("points", "lines").contains(steps.get(0)) && steps.size() > 1;
    if (!isPiece) {
      return String.join(" ", steps);
    }
    String below = String.join(" ", steps.subList(2, steps.size()));
    return steps.get(1) + (below.isEmpty() ? "" : ": " + below);
  }

  /** What stands in a job one step above an address. */
  public static String above(String address) {
    List<String> steps = Address.of(address).steps();
    return text(steps.subList(0, steps.size() - 1));
  }

  /** How many parts a line has, by its address. */
  public static int partsOf(MapNode tree, String line) {
    List<String> steps = Address.of(line).steps();
    return tree.findMap(steps.get(0))
        .flatMap(lines -> lines.findMap(steps.get(steps.size() - 1)))
        .map(fields -> fields.listItems("parts").size())
        .orElse(0);
  }

  /** What an element of the page is called that belongs to an address. */
  public static String id(String address) {
    StringBuilder id = new StringBuilder("at-");
    address
        .codePoints()
        .forEach(
            c -> {
              if (c < 128 && Character.isLetterOrDigit(c)) {
                id.appendCodePoint(c);
              } else {
                id.append(c == '.' ? "-" : "_" + Integer.toHexString(c) + "_");
              }
            });
    return id.toString();
  }
}
