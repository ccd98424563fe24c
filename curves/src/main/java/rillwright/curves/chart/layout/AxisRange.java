package rillwright.curves.chart.layout;

import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * What an axis shows: from a round number to a round number in round steps of 1, 2 or 5 times a
 * power of ten.
 *
 * @param firstStep steps from zero to its start
 * @param lastStep steps from zero to its end, above the first
 * @param step above 0
 */
public record AxisRange(int firstStep, int lastStep, double step) {
  public AxisRange {
    if (!(step > 0) || lastStep <= firstStep) {
      throw new IllegalArgumentException("an axis must rise in steps above 0");
    }
  }

  /**
   * The axis that shows values from zero up, and below zero where values are.
   *
   * @param least smallest value to show
   * @param greatest largest value to show; at least a little above zero is always shown
   * @param steps about how many steps to make of it
   */
  public static AxisRange covering(double least, double greatest, int steps) {
    double low = Math.min(0, least);
    double high = Math.max(greatest, Math.max(-low / steps, 1e-9));
    double step = roundStep((high - low) / steps, new double[] {1, 2, 5, 10});
    int last = Math.max(1, (int) Math.ceil(high / step - 1e-9));
    return new AxisRange((int) Math.floor(low / step + 1e-9), last, step);
  }

  /**
   * The axis that shows no more than values from one to another; zero need not be on it.
   *
   * @param least smallest value to show
   * @param greatest largest value to show; where it is not above the least, a little more is shown
   * @param steps about how many steps to make of it
   */
  public static AxisRange spanning(double least, double greatest, int steps) {
    double span = Math.max(greatest - least, Math.max(0.02 * Math.abs(greatest), 1e-9));
    double step = roundStep(span / steps, new double[] {1, 2, 5, 10});
    int first = (int) Math.floor(least / step + 1e-9);
    return new AxisRange(first, Math.max(first + 1, (int) Math.ceil(greatest / step - 1e-9)), step);
  }

  /** An axis with the same steps as another, so that both share grid lines; zero on zero. */
  public AxisRange alongside(double greatest) {
    double step =
        roundStep(Math.max(greatest, 1e-9) / lastStep, new double[] {1, 2, 2.5, 4, 5, 10});
    return new AxisRange(firstStep, lastStep, step);
  }

  /** The least round number that is not below a number. */
  private static double roundStep(double atLeast, double[] rounds) {
    int power = (int) Math.floor(Math.log10(atLeast));
    for (double round : rounds) {
      double step = power >= 0 ? round * Math.pow(10, power) : round / Math.pow(10, -power);
      if (step >= atLeast * (1 - 1e-9)) {
        return step;
      }
    }
    throw new IllegalStateException("no round step for " + atLeast);
  }

  /** Where it starts. */
  public double min() {
    return firstStep * step;
  }

  /** Where it ends. */
  public double max() {
    return lastStep * step;
  }

  /** Its round numbers, both ends included. */
  public DoubleStream ticks() {
    return IntStream.rangeClosed(firstStep, lastStep).mapToDouble(i -> i * step);
  }

  /** A number as its tick shows it, with as many decimals as the step needs. */
  public String label(double tick) {
    int decimals = 0;
    while (decimals < 9 && !isWhole(step * Math.pow(10, decimals))) {
      decimals++;
    }
    String text = String.format(Locale.ROOT, "%,." + decimals + "f", tick + 0.0);
    return text.startsWith("-") ? "\u2212" + text.substring(1) : text;
  }

  private static boolean isWhole(double number) {
    return Math.abs(number - Math.rint(number)) < 1e-6;
  }
}
