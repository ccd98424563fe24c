package rillwright.cli.file.field;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.NotAQuantity;
import rillwright.cli.file.quantity.Quantity;
import rillwright.cli.file.quantity.QuantityReader;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.curves.sheet.fact.Price;
import rillwright.curves.wording.PlainText;

/**
 * A single value read as what it should be.
 *
 * @param name of its field, for messages
 */
record Value(String name, Scalar scalar, Ledger ledger) {

  private void fault(String message) {
    ledger.fault(scalar.place(), name + ": " + message);
  }

  /** The quantity; a stand-in if it is none. */
  Quantity quantity(Measure measure, Range range) {
    OptionalDouble drawn = ledger.drawnFor(scalar);
    if (drawn.isPresent()) {
      return Quantity.exactly(drawn.getAsDouble());
    }
    try {
      Quantity quantity = QuantityReader.read(scalar.text(), ledger.shown(measure), range);
      if (!quantity.isExact()) {
        ledger.remember(new Uncertain(name, scalar, quantity, range, measure));
      }
      return quantity;
    } catch (NotAQuantity e) {
      fault(e.getMessage());
      return Quantity.exactly(range.standIn());
    }
  }

  /** Which of some values it is, from 0: the middle one where nothing else is drawn. */
  int oneOf(Quantity.Choice choice) {
    OptionalDouble drawn = ledger.drawnFor(scalar);
    int middle = (choice.values().size() - 1) / 2;
    Quantity known = new Quantity(choice.values().get(middle), choice);
    ledger.remember(new Uncertain(name, scalar, known, Range.POSITIVE, Measure.SMALL_LENGTH));
    return drawn.isPresent() ? choice.values().indexOf(drawn.getAsDouble()) : middle;
  }

  /** Whether a node asks for what the catalogue knows. */
  static boolean isCatalogue(Node node) {
    return node instanceof Scalar scalar && scalar.text().strip().equalsIgnoreCase("catalogue");
  }

  /** The middle of what the catalogue knows; a stand-in if it knows nothing. */
  double of(Optional<Quantity> catalogued, Measure measure, Range range) {
    OptionalDouble drawn = ledger.drawnFor(scalar);
    if (drawn.isPresent()) {
      return drawn.getAsDouble();
    }
    if (catalogued.isEmpty()) {
      fault("\"catalogue\" needs a type or material beside it that is in the catalogue");
    }
    catalogued
        .filter(quantity -> !quantity.isExact())
        .ifPresent(known -> ledger.remember(new Uncertain(name, scalar, known, range, measure)));
    return catalogued.map(Quantity::middle).orElse(range.standIn());
  }

  /** Whether it says yes. */
  boolean isYes() {
    String word = scalar.text().strip();
    if (word.equalsIgnoreCase("yes") || word.equalsIgnoreCase("true")) {
      return true;
    }
    if (!word.equalsIgnoreCase("no") && !word.equalsIgnoreCase("false")) {
      fault("write yes or no, not " + PlainText.quoted(word));
    }
    return false;
  }

  /** The price; empty if it is none. */
  Optional<Price> price(List<String> units) {
    try {
      return Optional.of(PriceReader.read(scalar.text(), units, ledger));
    } catch (PriceReader.NotAPrice e) {
      fault(e.getMessage());
      return Optional.empty();
    }
  }
}
