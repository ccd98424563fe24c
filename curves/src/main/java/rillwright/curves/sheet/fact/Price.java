package rillwright.curves.sheet.fact;

import java.util.regex.Pattern;

/**
 * What something costs.
 *
 * @param amount 0 or more
 * @param currency three capital letters, as in ISO 4217
 */
public record Price(double amount, String currency) {
  private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

  public Price {
    if (!(amount >= 0) || Double.isInfinite(amount)) {
      throw new IllegalArgumentException("a price is " + amount + "; it must be 0 or more");
    }
    if (!isCurrency(currency)) {
      throw new IllegalArgumentException("a currency is three capital letters such as USD");
    }
  }

  static boolean isCurrency(String text) {
    return CURRENCY.matcher(text).matches();
  }
}
