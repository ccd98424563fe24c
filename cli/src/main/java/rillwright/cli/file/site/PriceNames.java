package rillwright.cli.file.site;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.Nearest;
import rillwright.curves.wording.PlainText;

/**
 * Finds prices of pipe and fittings whose name is a slip for a known one: it would pass for no
 * price. A price list may hold more than is known here: other sizes, and names like nothing known,
 * are let be.
 */
public final class PriceNames {
  private final Catalogue catalogue;
  private final Collection<String> ownFittings;

  /**
   * Names that prices may have.
   *
   * @param ownFittings types of fittings that a project names beside those of the catalogue
   */
  public PriceNames(Catalogue catalogue, Collection<String> ownFittings) {
    this.catalogue = catalogue;
    this.ownFittings = List.copyOf(ownFittings);
  }

  /** Notes the faults in {@code prices}. */
  void check(Fields prices) {
    for (Entry entry : entries(prices, "pipe")) {
      if (!PipeSize.isSomeSizeOf(entry.key(), catalogue.materials())) {
        List<String> known =
            catalogue.listPipes().stream()
                .map(pipe -> pipe.material() + " " + pipe.size())
                .toList();
        fault(prices, "pipe", entry, "no material and size of pipe", known);
      }
    }
    for (Entry entry : entries(prices, "fittings")) {
      if (!PipeSize.isSomeSizeOf(entry.key(), fittingTypes())) {
        fault(prices, "fittings", entry, "no type and size of a fitting", fittings());
      }
    }
  }

  private static List<Entry> entries(Fields prices, String field) {
    return prices.findMap(field).map(named -> named.entries()).orElse(List.of());
  }

  private List<String> fittingTypes() {
    return Stream.concat(catalogue.fittingTypes().stream(), ownFittings.stream()).toList();
  }

  private List<String> fittings() {
    List<String> sizes = catalogue.listPipes().stream().map(PipeSize::size).distinct().toList();
    return fittingTypes().stream()
        .flatMap(type -> sizes.stream().map(size -> type + " " + size))
        .toList();
  }

  private static void fault(
      Fields prices, String field, Entry entry, String what, List<String> known) {
    if (Nearest.to(entry.key(), known).isEmpty()) {
      return;
    }
    prices
        .ledger()
        .fault(
            entry.keyPlace(),
            prices.nameOf(field)
                + ": "
                + PlainText.quoted(entry.key())
                + " is "
                + what
                + " that is known"
                + Choices.hint(entry.key(), known));
  }
}
