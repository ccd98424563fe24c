package rillwright.solver.progress;

/** Work that was stopped by the one who watched it. */
public final class Stopped extends RuntimeException {
  private static final long serialVersionUID = 1;

  /** Work that was stopped after some of its pieces. */
  public Stopped(int done, int all) {
    super("stopped after " + done + " of " + all);
  }
}
