package rillwright.cli.file.field;

/**
 * A price.
 *
 * @param amount in units of the currency, 0 or more
 * @param currency its three letters: {@code USD}
 * @param per what it is for: {@code kWh}, {@code m} (prices by length are brought to the metre), or
 *     empty for a piece
 */
public record Price(double amount, String currency, String per) {}
