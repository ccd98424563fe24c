package rillwright.solver.stream;

/** Whether a basin holds its pump once the stream has filled, in short; the gravest first. */
public enum Holding {
  /** Nothing runs in any stream. */
  NO_WATER,
  /** A chamber is drawn down to the pump's intake. */
  RUNS_DRY,
  /** More returns than is drawn, or less: its level does not come to rest. */
  NOT_IN_BALANCE,
  /** No room is left above the level at which the skimmer, or the water over a pump, gives out. */
  AT_ITS_LIMIT,
  /** It starves within days by evaporation and splash. */
  NEEDS_TOPPING_UP,
  /** Some of what comes back at a stop runs over. */
  RUNS_OVER_AT_STOP,
  /** None of these. */
  HOLDS;

  /** Less room than this above the starving level is none, m. */
  private static final double NO_ROOM_M = 1e-4;

  /** How a basin holds. */
  public static Holding of(RunningWater running, LevelBudget level) {
    boolean feeds = level.starveLevelM().isPresent();
    if (!running.streams().isEmpty()
        && running.streams().stream().allMatch(stream -> stream.flowM3PerS() == 0)) {
      return NO_WATER;
    }
    if (feeds && running.state().starves()) {
      return RUNS_DRY;
    }
    if (!running.isInBalance(level.basin().name())) {
      return NOT_IN_BALANCE;
    }
    double room =
        level.runningLevelM().orElse(Double.POSITIVE_INFINITY)
            - level.starveLevelM().orElse(Double.NEGATIVE_INFINITY);
    if (room < NO_ROOM_M) {
      return AT_ITS_LIMIT;
    }
    if (level.needsToppingUp()) {
      return NEEDS_TOPPING_UP;
    }
    return level.runsOverM3() > 0 ? RUNS_OVER_AT_STOP : HOLDS;
  }
}
