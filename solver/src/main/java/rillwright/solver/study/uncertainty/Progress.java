package rillwright.solver.study.uncertainty;

/** Is told how far the work has come, by one thread at a time. */
public interface Progress {
  /** Tells nobody. */
  Progress UNSEEN = (done, all) -> {};

  /**
   * So much is done.
   *
   * @param done samples worked out
   * @param all samples there are
   */
  void reached(int done, int all);
}
