package rillwright.cli.file.quantity;

import java.util.OptionalDouble;

/**
 * Takes numbers off the front of a text: {@code 38}, {@code .5}, {@code 1.004e-6}, {@code 3/4},
 * {@code 1-1/2}, {@code 1 1/2}.
 */
final class NumberScanner {
  private final String text;
  private int at;

  NumberScanner(String text) {
    this.text = text;
  }

  int position() {
    return at;
  }

  boolean atEnd() {
    return at == text.length();
  }

  /** What is left, with single spaces. */
  String rest() {
    String rest = text.substring(at).strip();
    while (rest.contains("  ")) {
      rest = rest.replace("  ", " ");
    }
    return rest;
  }

  void skipSpaces() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }

  boolean atNumber() {
    return isDigit(at) || (isChar(at, '.') && isDigit(at + 1));
  }

  private boolean isDigit(int index) {
    return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
  }

  private boolean isChar(int index, char character) {
    return index < text.length() && text.charAt(index) == character;
  }

  /** −1 after a minus sign, which is taken, else 1; a plus sign is taken too. */
  double sign() {
    skipSpaces();
    if (isChar(at, '-') || isChar(at, '\u2212')) {
      at++;
      return -1;
    }
    if (isChar(at, '+')) {
      at++;
    }
    return 1;
  }

  /** Takes a text off the front if it stands there. */
  boolean take(String expected) {
    boolean there = text.startsWith(expected, at);
    at += there ? expected.length() : 0;
    return there;
  }

  /** The unsigned number here; empty, with nothing taken, if there is none. */
  OptionalDouble number() {
    skipSpaces();
    if (!atNumber()) {
      return OptionalDouble.empty();
    }
    int start = at;
    int end = digitsFrom(at);
    if (end > start && isFractionFrom(start)) {
      return OptionalDouble.of(fraction());
    }
    int joined = joinFrom(end);
    if (end > start && joined > end && isFractionFrom(joined)) {
      double whole = Double.parseDouble(text.substring(start, end));
      at = joined;
      return OptionalDouble.of(whole + fraction());
    }
    return OptionalDouble.of(decimal(end));
  }

  private int digitsFrom(int index) {
    int end = index;
    while (isDigit(end)) {
      end++;
    }
    return end;
  }

  /** The index after a dash or spaces that may join a whole number to a fraction. */
  private int joinFrom(int index) {
    int next = index;
    while (isChar(next, ' ')) {
      next++;
    }
    if (isChar(next, '-')) {
      next++;
      while (isChar(next, ' ')) {
        next++;
      }
    }
    return next;
  }

  private boolean isFractionFrom(int index) {
    int slash = digitsFrom(index);
    return slash > index && isChar(slash, '/') && isDigit(slash + 1);
  }

  /** The fraction here; not finite over 0. */
  private double fraction() {
    int slash = digitsFrom(at);
    int end = digitsFrom(slash + 1);
    double upper = Double.parseDouble(text.substring(at, slash));
    double lower = Double.parseDouble(text.substring(slash + 1, end));
    at = end;
    return upper / lower;
  }

  private double decimal(int wholeEnd) {
    int end = wholeEnd;
    if (isChar(end, '.') && !isChar(end + 1, '.')) {
      end = digitsFrom(end + 1);
    }
    if (isChar(end, 'e') || isChar(end, 'E')) {
      boolean signed = isChar(end + 1, '+') || isChar(end + 1, '-');
      int exponent = end + (signed ? 2 : 1);
      end = isDigit(exponent) ? digitsFrom(exponent) : end;
    }
    double value = Double.parseDouble(text.substring(at, end));
    at = end;
    return value;
  }
}
