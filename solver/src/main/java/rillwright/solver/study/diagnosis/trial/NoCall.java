package rillwright.solver.study.diagnosis.trial;

/**
 * No fault that was drawn for a simulated call, in as much work as it is given, makes a fall weak
 * and leaves enough to be read; one that is seldom drawn may.
 */
public final class NoCall extends RuntimeException {
  private static final long serialVersionUID = 1;

  /** None was found. */
  public NoCall() {
    super("no fault that was drawn makes a call in this job");
  }
}
