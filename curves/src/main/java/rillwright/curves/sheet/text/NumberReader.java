package rillwright.curves.sheet.text;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import rillwright.curves.sheet.fault.FaultList;
import rillwright.curves.wording.PlainText;

/** Reads cells as numbers; what is not a number is noted with the way to write it. */
public final class NumberReader {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");
  private static final Pattern NOT_FINITE =
      Pattern.compile("[+-]?(nan|inf|infinity|\u221e)", Pattern.CASE_INSENSITIVE);
  private static final Pattern WITH_UNIT = Pattern.compile("[+-]?[\\d.,]+\\s*[\\p{L}%\u00b3/].*");
  private static final Pattern GROUPED = Pattern.compile("[+-]?\\d{1,3}([., '\u00a0]\\d{3})+.*");

  private final Separator separator;
  private final FaultList faults;

  /**
   * A reader for one sheet.
   *
   * @param separator between its cells, which decides the decimal mark
   * @param faults where to note what is not a number
   */
  public NumberReader(Separator separator, FaultList faults) {
    this.separator = separator;
    this.faults = faults;
  }

  /**
   * The number in a cell, finite; empty if there is none, which is then noted.
   *
   * @param what the quantity's name, for the message
   */
  public OptionalDouble read(String what, Cell cell) {
    OptionalDouble number = parse(cell.text());
    if (number.isEmpty()) {
      faults.add(
          cell.line(), cell.column(), what + " " + PlainText.quoted(cell.text()) + trouble(cell));
    }
    return number;
  }

  /** The number that a text is, finite; empty if it is none. */
  public OptionalDouble parse(String text) {
    boolean otherMark = separator.decimalMark() != '.' && text.indexOf('.') >= 0;
    String plain = text.replace(separator.decimalMark(), '.');
    if (otherMark || !NUMBER.matcher(plain).matches()) {
      return OptionalDouble.empty();
    }
    double value = Double.parseDouble(plain);
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  private String trouble(Cell cell) {
    String text = cell.text();
    if (NOT_FINITE.matcher(text).matches() || (NUMBER.matcher(text).matches() && isHuge(text))) {
      return " is not a finite number; write the number of the data sheet";
    }
    if (text.indexOf('#') > 0) {
      return " is not a number; a comment needs a line of its own";
    }
    if (WITH_UNIT.matcher(text).matches()) {
      return " is not a number; write the number alone, its unit stands in the heading";
    }
    if (separator == Separator.SEMICOLON && text.indexOf('.') >= 0) {
      return " has a decimal point; between semicolons decimals have a comma, such as 29,5, and"
          + " thousands no mark";
    }
    if (GROUPED.matcher(text).matches()) {
      return " has a mark between thousands; write the digits without it";
    }
    if (separator == Separator.COMMA && text.indexOf(',') >= 0) {
      return " has a decimal comma; write a decimal point, or put semicolons between all columns";
    }
    return String.format(
        Locale.ROOT, " is not a number; write one such as 29%c5", separator.decimalMark());
  }

  private static boolean isHuge(String text) {
    return Double.isInfinite(Double.parseDouble(text));
  }
}
