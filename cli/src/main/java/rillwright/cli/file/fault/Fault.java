package rillwright.cli.file.fault;

import rillwright.curves.wording.PlainText;

/**
 * One thing that is wrong with an input. Its text is harmless to print.
 *
 * @param file as the user named it
 * @param line from 1; 0 for the file as a whole
 * @param column in characters from 1; 0 for the file as a whole
 * @param message one sentence: which thing, what is wrong, what would be right
 */
public record Fault(String file, int line, int column, String message) {
  public Fault {
    file = PlainText.harmless(file);
    message = PlainText.harmless(message);
  }

  /** A fault at a place. */
  public static Fault at(Place place, String message) {
    return new Fault(place.source(), place.line(), place.column(), message);
  }

  /** {@code pond.yaml:14:22: line "supply": …}. */
  @Override
  public String toString() {
    return new Place(file, line, column) + ": " + message;
  }
}
