package rillwright.cli.file.fault;

/**
 * Where something is written.
 *
 * @param source the file as the user named it, or the change on the command line
 * @param line from 1; 0 for the source as a whole
 * @param column in characters from 1; 0 for the source as a whole
 */
public record Place(String source, int line, int column) {

  /** A source as a whole. */
  public static Place whole(String source) {
    return new Place(source, 0, 0);
  }

  /** Whether it is a source as a whole. */
  public boolean isWhole() {
    return line == 0;
  }

  /** {@code pond.yaml:14:22}, or the source alone, an empty name in quotes. */
  @Override
  public String toString() {
    String shown = source.isEmpty() ? "\"\"" : source;
    return isWhole() ? shown : shown + ":" + line + ":" + column;
  }
}
