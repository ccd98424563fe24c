package rillwright.cli.command.output;

/** Exit statuses of the program. */
public final class ExitStatus {
  /** Done. */
  public static final int DONE = 0;

  /**
   * Done, but a fall or outlet gets less than its target or a chamber starves; with {@code
   * --strict} only.
   */
  public static final int TARGET_MISSED = 1;

  /** The input is wrong: the file, an option, a name. */
  public static final int WRONG_INPUT = 2;

  /** The network has no balanced state. */
  public static final int NO_BALANCE = 3;

  /** A defect in the program. */
  public static final int DEFECT = 70;

  private ExitStatus() {}
}
