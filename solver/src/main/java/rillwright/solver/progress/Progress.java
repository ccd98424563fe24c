package rillwright.solver.progress;

/** Receives how far long work has come, by one thread at a time, and may stop it. */
public interface Progress {
  /** Does nothing. */
  Progress UNSEEN = (done, all) -> true;

  /**
   * So much is done.
   *
   * @param done pieces of work, from 0
   * @param all pieces that there are, at most
   * @return whether to go on; false ends the work with {@link Stopped}
   */
  boolean goesOn(int done, int all);
}
