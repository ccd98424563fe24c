package rillwright.cli.catalogue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;

/** When two spellings of a name or of a length mean the same. */
final class Spelling {
  private static final Pattern LENGTH =
      Pattern.compile(
          "(?:(?:(\\d+)(?:\\s+|\\s*-\\s*))?(\\d+)/(\\d+)|(\\d*\\.?\\d+))\\s*(\\p{L}+|['\"])");
  private static final double SAME_M = 1e-6;
  private static final char LAST_ASCII = 127;

  private Spelling() {}

  /** A name without what may differ: case, and how many spaces. */
  static String plain(String name) {
    StringBuilder plain = new StringBuilder(name.length());
    boolean spaced = false;
    for (int i = 0; i < name.length(); i++) {
      char character = name.charAt(i);
      if (Character.isWhitespace(character)) {
        spaced = plain.length() > 0;
        continue;
      }
      if (spaced) {
        plain.append(' ');
        spaced = false;
      }
      plain.append(character);
    }
    return plain.toString().toLowerCase(Locale.ROOT);
  }

  /** Whether a name is a spelling of a plain one, as {@link #plain} makes them. */
  static boolean isSpelling(String name, String plain) {
    int next = 0;
    boolean spaced = false;
    for (int i = 0; i < name.length(); i++) {
      char character = name.charAt(i);
      if (character > LAST_ASCII) {
        return plain(name).equals(plain);
      }
      if (Character.isWhitespace(character)) {
        spaced = next > 0;
        continue;
      }
      if (spaced && (next == plain.length() || plain.charAt(next++) != ' ')) {
        return false;
      }
      spaced = false;
      if (next == plain.length() || plain.charAt(next++) != Character.toLowerCase(character)) {
        return false;
      }
    }
    return next == plain.length();
  }

  /**
   * A length of one number and unit, m: {@code 63 mm}, {@code 1-1/2 in}, {@code 1 1/2 in}, {@code
   * 1.5 in}; empty if it is none.
   */
  static OptionalDouble lengthM(String text) {
    Matcher matcher = LENGTH.matcher(text.strip());
    if (!matcher.matches()) {
      return OptionalDouble.empty();
    }
    Optional<Unit> unit =
        Unit.find(matcher.group(5)).filter(found -> found.dimension() == Dimension.LENGTH);
    double number = number(matcher);
    return unit.isEmpty() || !Double.isFinite(number)
        ? OptionalDouble.empty()
        : OptionalDouble.of(exactProduct(number, unit.get().toSi(1)));
  }

  /** The double nearest to the product of two decimal numbers: 350 mm is 0.35 m, not a bit more. */
  private static double exactProduct(double one, double other) {
    return BigDecimal.valueOf(one).multiply(BigDecimal.valueOf(other)).doubleValue();
  }

  private static double number(Matcher matcher) {
    if (matcher.group(4) != null) {
      return Double.parseDouble(matcher.group(4));
    }
    double whole = matcher.group(1) == null ? 0 : Double.parseDouble(matcher.group(1));
    return whole + Double.parseDouble(matcher.group(2)) / Double.parseDouble(matcher.group(3));
  }

  /** Whether two sizes are spellings of one length. */
  static boolean sameSize(String one, String other) {
    if (one.equals(other)) {
      return true;
    }
    OptionalDouble first = lengthM(one);
    OptionalDouble second = lengthM(other);
    return first.isPresent()
        && second.isPresent()
        && Math.abs(first.getAsDouble() - second.getAsDouble()) < SAME_M;
  }

  /**
   * Of sizes from small to large, the last below one that is not among them and the first above.
   */
  static List<String> around(String written, List<String> sizes) {
    OptionalDouble lengthM = lengthM(written);
    String inUnit = written.replaceAll("[^\\p{L}]", "");
    List<String> alike = sizes.stream().filter(size -> size.endsWith(" " + inUnit)).toList();
    List<String> all = alike.isEmpty() ? sizes : alike;
    if (lengthM.isEmpty()) {
      return List.of();
    }
    int smaller = 0;
    while (smaller < all.size() && lengthM(all.get(smaller)).orElse(0) < lengthM.getAsDouble()) {
      smaller++;
    }
    return all.subList(Math.max(0, smaller - 1), Math.min(all.size(), smaller + 1));
  }

  /** Whether a text is a name, then a size, in whatever spelling of both. */
  static boolean isNamed(String text, String name, String size) {
    String plain = plain(text);
    String start = plain(name) + " ";
    return plain.startsWith(start) && sameSize(plain.substring(start.length()), plain(size));
  }

  /** Whether a text is a name, then a length, in whatever spelling of both. */
  static boolean isNamedWithLength(String text, String name) {
    String plain = plain(text);
    String start = plain(name) + " ";
    return plain.startsWith(start) && lengthM(plain.substring(start.length())).isPresent();
  }
}
