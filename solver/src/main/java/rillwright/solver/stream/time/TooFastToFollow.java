package rillwright.solver.stream.time;

import rillwright.solver.network.PointName;

/** Levels change so fast, against the hours to be followed, that the end is out of reach. */
final class TooFastToFollow extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient PointName water;

  /**
   * At a time.
   *
   * @param timeS s after the start
   * @param water the one with the least surface
   */
  TooFastToFollow(double timeS, PointName water) {
    super("levels cannot be followed beyond " + timeS + " s");
    this.water = water;
  }

  /** The basin, chamber or box with the least surface, whose level is the fastest. */
  PointName water() {
    return water;
  }
}
