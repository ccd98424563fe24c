package rillwright.solver.study.uncertainty;

/**
 * How to sample.
 *
 * @param samples how many, 2 or more
 * @param seed of the lot; the same seed gives the same answer
 * @param threads how many work at it, 1 or more; the answer does not depend on it
 */
public record SamplingPlan(int samples, long seed, int threads) {
  public SamplingPlan {
    if (samples < 2 || threads < 1) {
      throw new IllegalArgumentException(samples + " samples on " + threads + " threads");
    }
  }
}
