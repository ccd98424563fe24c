package rillwright.curves.chart.content;

/** Refuses numbers that cannot be drawn. */
final class Finite {
  private Finite() {}

  static void check(String what, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "a chart's " + what + " is " + value + "; it must be a finite number");
    }
  }
}
