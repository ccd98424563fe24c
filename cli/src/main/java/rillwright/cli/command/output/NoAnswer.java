package rillwright.cli.command.output;

/** A project without a balanced state, so that there is no answer; its message is for people. */
public final class NoAnswer extends RuntimeException {
  private static final long serialVersionUID = 1;

  public NoAnswer(String message) {
    super(message);
  }
}
