package rillwright.cli.file.quantity;

/**
 * A unit as a scale: base value = (number + shift) · factor.
 *
 * @param symbol as written
 * @param factor base units in one of it
 * @param shift added to the number first; 0 but for temperatures
 */
record Scale(String symbol, double factor, double shift) {

  Scale(String symbol, double factor) {
    this(symbol, factor, 0);
  }

  double toBase(double number) {
    return (number + shift) * factor;
  }
}
