package rillwright.solver.progress;

/** Counts the pieces of one work, whichever threads do them, and tells of each. */
public final class Steps {
  private final Progress progress;
  private final int all;
  private int done;
  private boolean stopped;

  /**
   * None is done yet.
   *
   * @param all how many there are, at most
   */
  public Steps(Progress progress, int all) {
    this.progress = progress;
    this.all = all;
  }

  /**
   * So many more are done; 0 to ask whether to begin another.
   *
   * @throws Stopped if the work is not to go on
   */
  public synchronized void done(int more) {
    if (!stopped && more > 0) {
      done += more;
      stopped = !progress.goesOn(done, all);
    }
    if (stopped) {
      throw new Stopped(done, all);
    }
  }
}
