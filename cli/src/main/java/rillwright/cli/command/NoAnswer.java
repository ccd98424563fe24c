package rillwright.cli.command;

/** A project without a balanced state, so that there is no answer; its message is for people. */
public final class NoAnswer extends RuntimeException {
  private static final long serialVersionUID = 1;

  NoAnswer(String message) {
    super(message);
  }
}
