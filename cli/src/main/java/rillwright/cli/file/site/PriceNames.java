package rillwright.cli.file.site;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.wording.Choices;
import rillwright.cli.wording.PlainText;

/** Finds prices of pipe and fittings that nothing is called: a slip would pass for no price. */
public final class PriceNames {
  private final Catalogue catalogue;
  private final List<String> fittingTypes;

  /**
   * Names that prices may have.
   *
   * @param ownFittings types of fittings that a project names beside those of the catalogue
   */
  public PriceNames(Catalogue catalogue, Collection<String> ownFittings) {
    this.catalogue = catalogue;
    this.fittingTypes = new ArrayList<>(catalogue.fittingTypes());
    this.fittingTypes.addAll(ownFittings);
  }

  /** Notes the faults in {@code prices}. */
  void check(Fields prices) {
    for (Entry entry : entries(prices, "pipe")) {
      if (catalogue.listPipes().stream().noneMatch(pipe -> pipe.isCalled(entry.key()))) {
        List<String> known =
            catalogue.listPipes().stream()
                .map(pipe -> pipe.material() + " " + pipe.size())
                .toList();
        fault(prices, "pipe", entry, "no material and size of pipe", known);
      }
    }
    for (Entry entry : entries(prices, "fittings")) {
      if (catalogue.listPipes().stream().noneMatch(pipe -> isFitting(entry.key(), pipe))) {
        fault(prices, "fittings", entry, "no type and size of a fitting", fittings());
      }
    }
  }

  private static List<Entry> entries(Fields prices, String field) {
    return prices.findMap(field).map(named -> named.entries()).orElse(List.of());
  }

  private boolean isFitting(String name, PipeSize pipe) {
    return fittingTypes.stream().anyMatch(type -> pipe.isSizeOf(name, type));
  }

  private List<String> fittings() {
    List<String> sizes = catalogue.listPipes().stream().map(PipeSize::size).distinct().toList();
    return fittingTypes.stream()
        .flatMap(type -> sizes.stream().map(size -> type + " " + size))
        .toList();
  }

  private static void fault(
      Fields prices, String field, Entry entry, String what, List<String> known) {
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
