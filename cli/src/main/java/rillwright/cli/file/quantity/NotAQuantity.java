package rillwright.cli.file.quantity;

/** A text that is no quantity of the kind asked for; its message is for the user. */
public final class NotAQuantity extends Exception {
  private static final long serialVersionUID = 1;

  NotAQuantity(String message) {
    super(message, null, false, false);
  }
}
