package rillwright.cli.file.field;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.NotAQuantity;
import rillwright.cli.file.quantity.QuantityReader;
import rillwright.cli.file.quantity.Range;
import rillwright.curves.sheet.fact.Price;
import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;
import rillwright.curves.wording.PlainText;

/** Reads prices: {@code 0.17 USD/kWh}, {@code 4.20 USD/ft}, {@code 389 USD}. */
final class PriceReader {
  private static final Pattern PRICE =
      Pattern.compile("(?<amount>[^A-Z]*)(?<currency>[A-Z]{3})(?:\\s*/\\s*(?<per>\\S+))?");

  /** A text that is no price; its message is for the user. */
  static final class NotAPrice extends Exception {
    private static final long serialVersionUID = 1;

    NotAPrice(String message) {
      super(message, null, false, false);
    }
  }

  private PriceReader() {}

  /**
   * The price that a text is; one by length is brought to the metre.
   *
   * @param units what it may be for: {@code kWh}, or units of length; none for a piece
   * @param ledger where the currency of the file is kept
   */
  static Price read(String text, List<String> units, Ledger ledger) throws NotAPrice {
    String example = "0.17 USD" + (units.isEmpty() ? "" : "/" + units.get(0));
    Matcher matcher = PRICE.matcher(text.strip());
    if (!matcher.matches()) {
      throw new NotAPrice(
          PlainText.quoted(text) + " is not a price; write for example \"" + example + "\"");
    }
    Optional<String> per = Optional.ofNullable(matcher.group("per"));
    if (units.isEmpty() ? per.isPresent() : per.filter(units::contains).isEmpty()) {
      throw new NotAPrice(
          PlainText.quoted(text)
              + (units.isEmpty()
                  ? " is a price per unit; the price of one piece is expected"
                  : " does not say per which unit")
              + "; write for example \""
              + example
              + "\"");
    }
    double amount = amount(matcher.group("amount"), example);
    String currency = matcher.group("currency");
    if (!ledger.agreesOn(currency)) {
      throw new NotAPrice(
          PlainText.quoted(text)
              + " is in "
              + currency
              + " while prices before are in "
              + ledger.currency().orElse("")
              + "; use one currency in a file");
    }
    Optional<Unit> length =
        per.flatMap(Unit::find).filter(unit -> unit.dimension() == Dimension.LENGTH);
    return length
        .map(unit -> new Price(amount / unit.toSi(1), currency))
        .orElse(new Price(amount, currency));
  }

  private static double amount(String text, String example) throws NotAPrice {
    try {
      return QuantityReader.read(text, Measure.NUMBER, Range.NOT_NEGATIVE).middle();
    } catch (NotAQuantity e) {
      throw new NotAPrice("the price " + e.getMessage() + ", as in \"" + example + "\"");
    }
  }
}
