package rillwright.cli.file.quantity;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import rillwright.curves.unit.Dimension;
import rillwright.curves.wording.PlainText;

/**
 * Reads quantities: an optional sign, a number, a unit, and for lengths a smaller unit; a range
 * {@code a .. b} or a tolerance {@code a ± b}.
 */
public final class QuantityReader {
  private static final int LONGEST = 200;

  /** Two values this near to each other, as a share, are one. */
  private static final double SAME = 1e-12;

  private static final Pattern DIVIDES_BY_0 = Pattern.compile("/0+(?!\\d)");

  /** Longer symbols before those that they begin with. */
  private static final List<String> LENGTH_SYMBOLS =
      Dimension.LENGTH.units().stream()
          .flatMap(unit -> unit.symbols().stream())
          .sorted(Comparator.comparing(String::length).reversed())
          .toList();

  /** A mark between thousands, not feet. */
  private static final Pattern THOUSANDS = Pattern.compile("'\\d{3}(?!\\d)");

  private final String text;
  private final Measure measure;
  private final Range range;

  private QuantityReader(String text, Measure measure, Range range) {
    this.text = text;
    this.measure = measure;
    this.range = range;
  }

  /**
   * The quantity that a text is.
   *
   * @param text as the user wrote it
   * @param measure what it must measure
   * @param range what it may be
   * @throws NotAQuantity if it is none, measures something else or is out of range
   */
  public static Quantity read(String text, Measure measure, Range range) throws NotAQuantity {
    if (text.length() > LONGEST) {
      throw new NotAQuantity(PlainText.quoted(text) + " is too long to be a quantity");
    }
    return new QuantityReader(text.strip(), measure, range).read();
  }

  /** Whether a text is written in a unit of a measure. */
  public static boolean fits(String text, Measure measure) {
    try {
      read(text, measure, Range.ANY);
      return true;
    } catch (NotAQuantity e) {
      return false;
    }
  }

  private Quantity read() throws NotAQuantity {
    Optional<String> trouble = RangeTrouble.ofForm(text);
    if (trouble.isPresent()) {
      throw new NotAQuantity(trouble.get());
    }
    for (String sign : List.of("±", "+-")) {
      int at = text.indexOf(sign);
      if (at >= 0) {
        return tolerance(text.substring(0, at), text.substring(at + sign.length()));
      }
    }
    int dots = text.indexOf("..");
    if (dots >= 0) {
      return even(text.substring(0, dots), text.substring(dots + 2));
    }
    return Quantity.exactly(valid(text));
  }

  private Quantity tolerance(String middleText, String widthText) throws NotAQuantity {
    double middle = valid(middleText.strip());
    Optional<String> share =
        RangeTrouble.share(text, middleText.strip(), widthText.strip(), measure);
    if (share.isPresent()) {
      throw new NotAQuantity(share.get());
    }
    double width = new Magnitude(widthText.strip(), measure, Range.ANY).difference();
    if (!(width > 0)) {
      throw new NotAQuantity(RangeTrouble.notAbove0(text));
    }
    if (width > Range.LARGEST) {
      throw new NotAQuantity(PlainText.quoted(widthText.strip()) + " is too large to be real");
    }
    return new Quantity(middle, new Quantity.Normal(width));
  }

  private Quantity even(String leastText, String greatestText) throws NotAQuantity {
    double least = valid(leastText.strip());
    double greatest = valid(greatestText.strip());
    if (!(least < greatest)) {
      boolean isOneValue = least - greatest <= SAME * Math.abs(greatest);
      throw new NotAQuantity(RangeTrouble.notRising(text, leastText.strip(), isOneValue));
    }
    return new Quantity(least + (greatest - least) / 2, new Quantity.Even(least, greatest));
  }

  /** A value that is believable and in range. */
  private double valid(String single) throws NotAQuantity {
    double value = new Magnitude(single, measure, range).value();
    if (!Double.isFinite(value) && DIVIDES_BY_0.matcher(single).find()) {
      throw new NotAQuantity(PlainText.quoted(single) + " divides by 0; write another number");
    }
    if (!(Math.abs(value) <= Range.LARGEST)) {
      throw new NotAQuantity(PlainText.quoted(single) + " is too large to be real");
    }
    if (value != 0 && Math.abs(value) < Range.SMALLEST) {
      throw new NotAQuantity(PlainText.quoted(single) + " is too small to be real");
    }
    if (!range.holds(value)) {
      throw new NotAQuantity(PlainText.quoted(single) + " is not possible; it " + range.words());
    }
    return value;
  }

  /** One number with its unit, or several that add up. */
  private record Magnitude(String single, Measure measure, Range range) {

    /** Its value in base units. */
    double value() throws NotAQuantity {
      return value(false);
    }

    /** Its value in base units as a difference: a scale's zero does not matter. */
    double difference() throws NotAQuantity {
      return value(true);
    }

    private double value(boolean asDifference) throws NotAQuantity {
      NumberScanner scanner = new NumberScanner(single);
      double sign = scanner.sign();
      OptionalDouble sum =
          measure.addsUp() && !THOUSANDS.matcher(single).find()
              ? sumFrom(scanner.position())
              : OptionalDouble.empty();
      if (sum.isPresent()) {
        return sign * sum.getAsDouble() + 0.0;
      }
      OptionalDouble number = scanner.number();
      if (number.isEmpty()) {
        throw new NotAQuantity(Trouble.notANumber(single, measure));
      }
      String symbol = scanner.rest();
      Optional<Scale> scale = measure.find(symbol);
      if (scale.isEmpty()) {
        throw new NotAQuantity(
            Trouble.wrongUnit(single, scanner.position(), symbol, measure, range));
      }
      double signed = sign * number.getAsDouble();
      return (asDifference ? signed * scale.get().factor() : scale.get().toBase(signed)) + 0.0;
    }

    /**
     * The unsigned sum of two or more numbers with length units, each smaller than the one before;
     * empty if the text is something else.
     */
    private OptionalDouble sumFrom(int start) throws NotAQuantity {
      NumberScanner scanner = new NumberScanner(single.substring(start));
      double sum = 0;
      double lastFactor = Double.POSITIVE_INFINITY;
      int addends = 0;
      boolean falling = true;
      while (!scanner.atEnd()) {
        OptionalDouble number = scanner.number();
        scanner.skipSpaces();
        Optional<Scale> scale =
            LENGTH_SYMBOLS.stream().filter(scanner::take).findFirst().flatMap(measure::find);
        if (number.isEmpty() || scale.isEmpty()) {
          return OptionalDouble.empty();
        }
        falling &= scale.get().factor() < lastFactor;
        lastFactor = scale.get().factor();
        sum += scale.get().toBase(number.getAsDouble());
        addends++;
        scanner.skipSpaces();
      }
      if (addends < 2) {
        return OptionalDouble.empty();
      }
      if (!falling) {
        throw new NotAQuantity(
            PlainText.quoted(single)
                + " adds up oddly; write the larger unit first: \"7 ft 3 in\"");
      }
      return OptionalDouble.of(sum);
    }
  }
}
