package rillwright.cli.file.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rillwright.curves.wording.PlainText;

/**
 * Ways in which people write quantities that are not those of project files, and the same quantity
 * as it is written there: never another one.
 */
final class EverydayWriting {
  private static final String NUMBER = "(\\d[\\d./-]*(?: \\d+/\\d+)?)";
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "^([-+\u2212]?)\\s*"
              + NUMBER
              + "\\s*(?:'|\u2032|\u2019|ft\\.?|feet|foot)\\s*(-?)\\s*"
              + NUMBER
              + "\\s*(?:''|\"|\u2033|\u201d|in\\.?|inch|inches)?$");
  private static final Pattern RANGE =
      Pattern.compile("^(\\d[\\d./]*)\\s*(?:-|\u2013|to)\\s*(\\d[\\d./]*)\\s*(\\D+)$");
  private static final Pattern FROM_TO =
      Pattern.compile("^(.*[\\p{L}\\d%\u00b0])\\s+(?:-|\u2013|to)\\s+(\\S.*)$");
  private static final Pattern DATE = Pattern.compile("^\\d{4}-\\d{1,2}-\\d{1,2}$");
  private static final Pattern NUMBER_AND_WORD =
      Pattern.compile("^([-+\u2212]?\\d*\\.?\\d+)\\s*(\\p{L}+\\.?|\u00b0)$");

  private static final Map<Character, String> FRACTIONS =
      Map.of(
          '\u00bd', "1/2", '\u00bc', "1/4", '\u00be', "3/4", '\u215b', "1/8", '\u215c', "3/8",
          '\u215d', "5/8", '\u215e', "7/8", '\u2153', "1/3", '\u2154', "2/3");

  /** A count in words is itself; so is a share. */
  private static final List<String> COUNTS =
      List.of(
          "none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

  private static final Map<String, String> SHARES =
      Map.of("half", "50 %", "quarter", "25 %", "none", "0 %", "full", "100 %", "all", "100 %");

  /** How many of a known unit an unknown one is. */
  private record Worth(double number, String unit) {}

  private static final double INCHES_A_FOOT = 12;
  private static final double DAYS_IN_A_MONTH = 365 / 12.0;

  private static final Map<String, Worth> WORTHS =
      Map.ofEntries(
          Map.entry("yd", new Worth(3, "ft")),
          Map.entry("yard", new Worth(3, "ft")),
          Map.entry("yards", new Worth(3, "ft")),
          Map.entry("km", new Worth(1000, "m")),
          Map.entry("week", new Worth(7, "days/year")),
          Map.entry("weeks", new Worth(7, "days/year")),
          Map.entry("month", new Worth(DAYS_IN_A_MONTH, "days/year")),
          Map.entry("months", new Worth(DAYS_IN_A_MONTH, "days/year")),
          Map.entry("\u00b0", new Worth(100 / 90.0, "%")),
          Map.entry("deg", new Worth(100 / 90.0, "%")),
          Map.entry("degree", new Worth(100 / 90.0, "%")),
          Map.entry("degrees", new Worth(100 / 90.0, "%")));

  private EverydayWriting() {}

  /**
   * The answer to a text that is understood but written otherwise, what comes after the text:
   * {@code is written "5 ft 6 in" here}; empty if it is none.
   */
  static Optional<String> answer(String text, Measure measure) {
    Optional<String> plain = plain(text.strip(), measure).filter(it -> reads(it, measure));
    if (plain.isPresent()) {
      return Optional.of(" is written " + PlainText.quoted(plain.get()) + " here");
    }
    if (DATE.matcher(text).matches()) {
      return Optional.of(" is a date; expected " + measure.words());
    }
    return worth(text, measure);
  }

  private static boolean reads(String text, Measure measure) {
    return QuantityReader.fits(text, measure);
  }

  private static Optional<String> plain(String text, Measure measure) {
    String word = text.toLowerCase(Locale.ROOT);
    int count = COUNTS.indexOf(word);
    if (measure.find("%").isPresent() && SHARES.containsKey(word)) {
      return Optional.of(SHARES.get(word));
    }
    if (!measure.needsUnit() && count >= 0) {
      return Optional.of(Integer.toString(count));
    }
    String ascii = withoutFractionSigns(text);
    Matcher feet = FEET_AND_INCHES.matcher(ascii);
    if (measure.addsUp() && feet.matches() && !isFromTo(feet.group(3), feet.group(4))) {
      String sign = feet.group(1).equals("+") ? "" : feet.group(1);
      return Optional.of(sign + feet.group(2) + " ft " + feet.group(4) + " in");
    }
    if (!ascii.equals(text)) {
      return Optional.of(ascii);
    }
    Matcher range = RANGE.matcher(text);
    if (range.matches()) {
      String unit = " " + range.group(3).strip();
      return Optional.of(range.group(1) + unit + " .. " + range.group(2) + unit);
    }
    Matcher fromTo = FROM_TO.matcher(text);
    if (fromTo.matches()) {
      return Optional.of(fromTo.group(1) + " .. " + fromTo.group(2));
    }
    return Optional.empty();
  }

  /** Whether a dash between feet and inches parts two lengths: 1 ft - 18 in. */
  private static boolean isFromTo(String dash, String inches) {
    return !dash.isEmpty() && new NumberScanner(inches).number().orElse(0) >= INCHES_A_FOOT;
  }

  /** {@code 5-1/2 ft} for 5½ ft. */
  private static String withoutFractionSigns(String text) {
    StringBuilder ascii = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char character = text.charAt(i);
      String fraction = FRACTIONS.get(character);
      if (fraction == null) {
        ascii.append(character);
      } else {
        String before = ascii.toString().stripTrailing();
        boolean mixed = !before.isEmpty() && Character.isDigit(before.charAt(before.length() - 1));
        ascii.setLength(mixed ? before.length() : ascii.length());
        ascii.append(mixed ? "-" : "").append(fraction);
      }
    }
    return ascii.toString();
  }

  private static Optional<String> worth(String text, Measure measure) {
    Matcher parts = NUMBER_AND_WORD.matcher(text);
    if (!parts.matches()) {
      return Optional.empty();
    }
    String unit = parts.group(2);
    Worth worth = WORTHS.get(unit.toLowerCase(Locale.ROOT));
    if (worth == null || measure.find(worth.unit()).isEmpty()) {
      return Optional.empty();
    }
    double number = Double.parseDouble(parts.group(1).replace('\u2212', '-')) * worth.number();
    String said = " is written \"" + shortly(number) + " " + worth.unit() + "\" here";
    return Optional.of(
        worth.unit().equals("%") ? said + " (of the 90 degrees of a handle's way)" : said);
  }

  private static String shortly(double number) {
    String text = String.format(Locale.ROOT, "%.1f", number);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
