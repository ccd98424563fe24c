package rillwright.cli.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import rillwright.cli.file.change.AddressBook;
import rillwright.cli.file.field.Uncertain;
import rillwright.cli.file.tree.Scalar;

/** The quantities of a project that are not known exactly, each once and with its address. */
public final class UncertainQuantities {
  /** Sections that say what flows. */
  private static final List<String> NETWORK = List.of("water", "points", "lines", "pumps");

  private final List<Named> inTheNetwork = new ArrayList<>();
  private final List<Named> elsewhere = new ArrayList<>();

  /**
   * A quantity with the address by which a change would name it: {@code
   * lines.intake.skimmer.clogged}.
   */
  public record Named(String address, Uncertain quantity) {}

  /** The quantities of a project. */
  public UncertainQuantities(Project project) {
    AddressBook addresses = new AddressBook(project.tree());
    Set<Scalar> met = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Uncertain quantity : project.uncertain()) {
      if (met.add(quantity.written())) {
        String address = addresses.find(quantity.written()).orElse(quantity.what());
        boolean flows =
            addresses.findSection(quantity.written()).filter(NETWORK::contains).isPresent();
        (flows ? inTheNetwork : elsewhere).add(new Named(address, quantity));
      }
    }
  }

  /** Those that may change what flows, in the order in which they were read. */
  public List<Named> inTheNetwork() {
    return List.copyOf(inTheNetwork);
  }

  /** Those that have no say in what flows. */
  public List<Named> elsewhere() {
    return List.copyOf(elsewhere);
  }
}
