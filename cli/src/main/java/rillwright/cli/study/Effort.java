package rillwright.cli.study;

/**
 * What trying took.
 *
 * @param solves how often the whole network was balanced
 * @param seconds of wall time
 */
public record Effort(int solves, double seconds) {
  private static final double NANOSECONDS = 1e9;

  /**
   * What balances took.
   *
   * @param startNs when they began, ns of {@link System#nanoTime}
   */
  public static Effort since(long startNs, int solves) {
    return new Effort(solves, (System.nanoTime() - startNs) / NANOSECONDS);
  }

  /** Balances a second. */
  public double solvesPerSecond() {
    return solves / seconds;
  }
}
