package rillwright.cli.hardening;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** Seeded draws, and what is drawn as a project file writes it. */
final class Draw {
  private final SplittableRandom random;

  Draw(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** Whether something of this chance happens. */
  boolean chance(double chance) {
    return random.nextDouble() < chance;
  }

  int below(int bound) {
    return random.nextInt(bound);
  }

  double uniform(double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  double logUniform(double least, double most) {
    return least * Math.pow(most / least, random.nextDouble());
  }

  <T> T oneOf(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  /** {@code 1.25 m}. */
  String metres(double least, double most) {
    return quantity(uniform(least, most), "m");
  }

  /** {@code 35 %}. */
  String percent(double least, double most) {
    return quantity(uniform(least, most), "%");
  }

  /** A number of four figures and its unit. */
  static String quantity(double value, String unit) {
    return String.format(Locale.ROOT, "%.4g %s", value, unit);
  }
}
