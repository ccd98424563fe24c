package rillwright.cli.report;

/**
 * What trying took.
 *
 * @param solves how often the whole network was balanced
 * @param seconds of wall time
 */
public record Effort(int solves, double seconds) {
  private static final int WORTH_TELLING = 100;

  /** Whether it is worth telling: enough to be measured. */
  public boolean isWorthTelling() {
    return solves >= WORTH_TELLING && seconds > 0;
  }

  /** Balances a second. */
  public double solvesPerSecond() {
    return solves / seconds;
  }
}
