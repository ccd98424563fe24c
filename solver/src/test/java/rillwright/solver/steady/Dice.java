package rillwright.solver.steady;

import java.util.SplittableRandom;

/**
 * Seeded chance. In one network in six all levels are whole metres, so that crests, levels and
 * shut-off heads coincide.
 */
final class Dice {
  private final SplittableRandom random;
  private final boolean wholeMetres;

  Dice(long seed) {
    this.random = new SplittableRandom(seed);
    this.wholeMetres = chance(1.0 / 6);
  }

  boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  /** 0 to {@code bound} − 1. */
  int below(int bound) {
    return random.nextInt(bound);
  }

  double uniform(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  /** Even in its logarithm. */
  double logUniform(double from, double to) {
    return Math.exp(uniform(Math.log(from), Math.log(to)));
  }

  /** A level or head, m. */
  double level(double from, double to) {
    double level = uniform(from, to);
    return wholeMetres ? Math.max(Math.ceil(from), Math.rint(level)) : level;
  }
}
