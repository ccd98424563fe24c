package rillwright.cli.file.tree;

import java.util.List;

/**
 * A number with a decimal comma in braces: YAML takes {@code {flow: 1,5 m3/h}} for a flow of 1 and
 * a field called "5 m3/h". Joined again it can be answered as what it is.
 */
final class DecimalComma {
  private DecimalComma() {}

  /** Whether an entry is what follows the comma of the value before it. */
  static boolean wasSplitBy(List<Entry> before, Entry entry) {
    if (before.isEmpty()
        || entry.key().isEmpty()
        || !isDigit(entry.key().charAt(0))
        || !(entry.value() instanceof Scalar value && value.isNothing())
        || !(before.get(before.size() - 1).value() instanceof Scalar number)) {
      return false;
    }
    String text = number.text();
    return !text.isEmpty()
        && isDigit(text.charAt(text.length() - 1))
        && number.place().line() == entry.keyPlace().line()
        && number.place().column() + text.length() + 1 == entry.keyPlace().column();
  }

  /** Puts the two together in the last entry. */
  static void rejoin(List<Entry> before, Entry entry) {
    int last = before.size() - 1;
    Entry split = before.get(last);
    Scalar number = (Scalar) split.value();
    Scalar whole = new Scalar(number.text() + "," + entry.key(), Scalar.Form.TEXT, number.place());
    before.set(last, new Entry(split.key(), split.keyPlace(), whole));
  }

  private static boolean isDigit(char character) {
    return character >= '0' && character <= '9';
  }
}
