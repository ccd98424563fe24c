package rillwright.solver.stream.time;

/** Levels change so fast, against the hours to be followed, that the end is out of reach. */
public final class TooFastToFollow extends RuntimeException {
  private static final long serialVersionUID = 1;

  /** At a time, s after the start. */
  TooFastToFollow(double timeS) {
    super("levels cannot be followed beyond " + timeS + " s");
  }
}
