package rillwright.cli.file.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rillwright.curves.wording.PlainText;

/** What to answer to a text that is no quantity of the kind asked for. */
final class Trouble {
  private static final Pattern COMMA = Pattern.compile("(\\d),(\\d+)");
  private static final Pattern GROUPED =
      Pattern.compile("^[-+\u2212]?\\d{1,3}(?:[ _'\u2019\u00a0\u202f]\\d{3})+(?![\\d/])");
  private static final Pattern NOT_FINITE =
      Pattern.compile("[-+]?\\.?(?:nan|inf|infinity|\u221e)\\b.*|[-+]?\u221e.*");

  private Trouble() {}

  /** A text that does not begin with a number. */
  static String notANumber(String text, Measure measure) {
    String quoted = PlainText.quoted(text);
    if (text.isEmpty()) {
      return "a value is missing here; write " + wanted(measure);
    }
    if (NOT_FINITE.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
      return quoted + " is not a usable value; write " + wanted(measure);
    }
    String kind = measure.needsUnit() ? "quantity" : "number";
    return EverydayWriting.answer(text, measure)
        .map(answer -> quoted + answer)
        .orElseGet(() -> quoted + " is not a " + kind + "; write " + wanted(measure));
  }

  /**
   * A number with something after it that is not one of its units.
   *
   * @param text all of it
   * @param numberEnd where the number ends
   * @param symbol what stands after it
   * @param range what it may be: nothing else is offered
   */
  static String wrongUnit(String text, int numberEnd, String symbol, Measure measure, Range range) {
    String quoted = PlainText.quoted(text);
    String number = text.substring(0, numberEnd).strip();
    if (symbol.isEmpty()) {
      return quoted + " has no unit; write " + example(number, measure, range);
    }
    Optional<String> misread =
        EverydayWriting.answer(text, measure).or(() -> misreadNumber(text, symbol));
    if (misread.isPresent()) {
      return quoted + misread.get();
    }
    Optional<String> words = Measure.wordsOf(symbol);
    if (!measure.needsUnit() && !Character.isDigit(symbol.charAt(0))) {
      return quoted + notPlain(number, symbol, words.isPresent(), measure);
    }
    Optional<String> usual = UnitSpelling.usual(symbol, measure.symbols());
    if (words.isPresent() && usual.isPresent()) {
      return quoted + " is written \"" + number + " " + usual.get() + "\" here";
    }
    if (words.isPresent()) {
      return quoted + " is " + words.get() + "; expected " + measure.words() + in(measure);
    }
    return unknownUnit(quoted, symbol, measure);
  }

  /** The number is offered alone only where what stands after it does not change its worth. */
  private static String notPlain(String number, String symbol, boolean isUnit, Measure measure) {
    String wrong = isUnit ? " has a unit; expected a plain number" : " is not a number";
    if (!measure.meaning().isEmpty()) {
      return wrong + "; " + measure.meaning();
    }
    if (symbol.equals("%") || !symbol.chars().allMatch(Trouble::isOfAWord)) {
      return wrong + "; write " + wanted(measure);
    }
    return wrong + "; write \"" + number + "\"" + (isUnit ? "" : " alone");
  }

  private static boolean isOfAWord(int character) {
    return Character.isLetter(character) || character == ' ' || character == '.';
  }

  private static Optional<String> misreadNumber(String text, String symbol) {
    Matcher comma = COMMA.matcher(text);
    if (comma.find()) {
      String point = text.replace(',', '.');
      String without = text.replace(",", "");
      return Optional.of(
          comma.group(2).length() == 3
              ? " has a comma in its number; write \""
                  + without
                  + "\" if the comma parts thousands, \""
                  + point
                  + "\" if it is a decimal comma"
              : " has a decimal comma; write it with a point: \"" + point + "\"");
    }
    Matcher grouped = GROUPED.matcher(text);
    if (grouped.find()) {
      String plain = grouped.group().replaceAll("[ _'\u2019\u00a0\u202f]", "");
      return Optional.of(
          " has a mark between thousands; write \"" + plain + text.substring(grouped.end()) + "\"");
    }
    if (symbol.startsWith("-")) {
      return Optional.of(" is not one number; a range is written with two dots, as 3 in .. 4 in");
    }
    return Optional.empty();
  }

  private static String unknownUnit(String quoted, String symbol, Measure measure) {
    String unit = symbol.split("\\s(?=[\\d.])", 2)[0];
    if (measure.find(unit).isPresent()) {
      return quoted + " does not end after its unit; write one quantity alone";
    }
    Optional<String> meant =
        UnitSpelling.meant(unit, measure.symbols()).filter(near -> measure.find(near).isPresent());
    String ending =
        meant.isPresent()
            ? "; did you mean \"" + meant.get() + "\"?" + in(measure)
            : "; choose " + listed(measure);
    return quoted + ": " + PlainText.quoted(unit) + " is not a unit that is known" + ending;
  }

  /** {@code a number with its unit (ft, in, m)}. */
  private static String wanted(Measure measure) {
    return measure.needsUnit()
        ? "a number with its unit" + in(measure)
        : measure.words() + ", for example " + measure.examples().get(0);
  }

  /** {@code (ft, in, m)}. */
  private static String in(Measure measure) {
    return " (" + listed(measure) + ")";
  }

  /** {@code for example "38 ft" (ft, in, m)}, {@code "3 in" or "3 mm" (in, mm, cm)}. */
  private static String example(String number, Measure measure, Range range) {
    List<String> symbols = measure.symbols();
    if (symbols.isEmpty() || !measure.needsUnit()) {
      return wanted(measure);
    }
    String figure = symbols.get(0).equals("%") ? inPercent(number) : number;
    List<String> offered =
        measure.examples().stream().filter(it -> isIn(range, number, it, measure)).toList();
    List<String> examples = offered.isEmpty() ? measure.examples() : offered;
    String shown =
        examples.stream()
            .map(symbol -> "\"" + figure + " " + symbol + "\"")
            .collect(Collectors.joining(" or "));
    String units = symbols.size() == 1 ? "" : " (" + listed(measure) + ")";
    return (examples.size() == 1 ? "for example " : "") + shown + units;
  }

  private static boolean isIn(Range range, String number, String symbol, Measure measure) {
    NumberScanner scanner = new NumberScanner(number);
    double sign = scanner.sign();
    double value = sign * scanner.number().orElse(0);
    return measure.find(symbol).filter(unit -> range.holds(unit.toBase(value))).isPresent();
  }

  /** A bare 0.6 in percent is most likely meant as 60 %. */
  private static String inPercent(String number) {
    try {
      double value = Double.parseDouble(number);
      return value > 0 && value <= 1
          ? String.format(Locale.ROOT, "%.4g", 100 * value).replaceAll("\\.?0+$", "")
          : number;
    } catch (NumberFormatException e) {
      return number;
    }
  }

  private static String listed(Measure measure) {
    return String.join(", ", measure.symbols());
  }
}
