package rillwright.cli.report.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One number of decimals for the figures of a column: as many as any of them has, so "9 m3/h"
 * stands as "9.00 m3/h" beside "9.05 m3/h"; but where a larger one, rounded to three figures, has
 * fewer, as many as that, so that no figure is made up: "9.1 m3/h" beside "10.2 m3/h". Figures of
 * which two would not be left, and columns of several units, stay as they are.
 */
public final class Decimals {
  private static final Pattern FIGURE =
      Pattern.compile("([+-]?)([0-9][0-9,]*)(\\.[0-9]+)?( (?!to |of )[^0-9 ]\\S*)( .*)?");
  private static final int COMPUTED = 3;

  private Decimals() {}

  /** The cells of a column with one number of decimals; those that are no figures as they are. */
  public static List<String> alike(List<String> cells) {
    List<Matcher> figures = cells.stream().map(FIGURE::matcher).filter(Matcher::matches).toList();
    boolean oneUnit = figures.stream().map(it -> it.group(4)).distinct().count() == 1;
    int most = figures.stream().mapToInt(Decimals::decimals).max().orElse(0);
    boolean already = figures.stream().allMatch(it -> decimals(it) == most);
    if (!oneUnit || already) {
      return cells;
    }
    boolean written =
        figures.stream().anyMatch(it -> number(it).stripTrailingZeros().precision() > COMPUTED);
    int decimals =
        written
            ? most
            : Math.min(most, figures.stream().mapToInt(Decimals::sound).min().orElse(most));
    boolean tooFew = figures.stream().anyMatch(it -> decimals < needed(it));
    return tooFew ? cells : cells.stream().map(cell -> with(cell, decimals)).toList();
  }

  /** Two numbers with as many decimals as either has: "13.0 to 14.7". */
  static String range(String low, String high) {
    int decimals =
        Math.max(new BigDecimal(plain(low)).scale(), new BigDecimal(plain(high)).scale());
    return padded(low, decimals) + " to " + padded(high, decimals);
  }

  private static String padded(String number, int decimals) {
    int lacking = decimals - new BigDecimal(plain(number)).scale();
    return lacking == 0 ? number : number + (number.contains(".") ? "" : ".") + "0".repeat(lacking);
  }

  private static String plain(String number) {
    return number.replace(",", "");
  }

  /** A cell with no more decimals than three figures of the greatest of its column have. */
  public static String beside(String cell, String greatest) {
    Matcher figure = FIGURE.matcher(cell);
    Matcher most = FIGURE.matcher(greatest);
    return figure.matches() && most.matches() && decimals(figure) > sound(most)
        ? with(cell, sound(most))
        : cell;
  }

  private static int decimals(Matcher figure) {
    return Optional.ofNullable(figure.group(3)).map(it -> it.length() - 1).orElse(0);
  }

  /** How many decimals three figures leave it. */
  private static int sound(Matcher figure) {
    BigDecimal number = number(figure).stripTrailingZeros();
    return number.signum() == 0
        ? Integer.MAX_VALUE
        : Math.max(0, COMPUTED - number.precision() + number.scale());
  }

  /** How many decimals show two of its figures, as far as it has them. */
  private static int needed(Matcher figure) {
    BigDecimal number = number(figure);
    int two = number.signum() == 0 ? 0 : number.scale() - number.precision() + 2;
    return Math.max(0, Math.min(two, decimals(figure)));
  }

  private static BigDecimal number(Matcher figure) {
    String decimals = Optional.ofNullable(figure.group(3)).orElse("");
    return new BigDecimal(figure.group(2).replace(",", "") + decimals);
  }

  private static String with(String cell, int decimals) {
    Matcher figure = FIGURE.matcher(cell);
    if (!figure.matches()) {
      return cell;
    }
    BigDecimal number = number(figure).setScale(decimals, RoundingMode.HALF_EVEN);
    String whole = Figures.withSeparators(number.toPlainString());
    String rest = Optional.ofNullable(figure.group(5)).orElse("");
    return figure.group(1) + whole + figure.group(4) + rest;
  }
}
