package rillwright.curves.sheet.fact;

/**
 * The speeds at which a pump may run, as shares of the speed of its published curve.
 *
 * @param least above 0
 * @param greatest not below the least, 2 or less
 */
public record SpeedRange(double least, double greatest) {
  public SpeedRange {
    if (!isRange(least, greatest)) {
      throw new IllegalArgumentException(
          "a range of speeds is %s to %s; it must rise from above 0 to 2 or less"
              .formatted(least, greatest));
    }
  }

  static boolean isRange(double least, double greatest) {
    return least > 0 && least <= greatest && greatest <= 2;
  }
}
