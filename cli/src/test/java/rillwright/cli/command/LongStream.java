package rillwright.cli.command;

import java.nio.file.Path;

/** The example with a long stream and a supplier's list of pumps. */
final class LongStream {
  static final Path FOLDER = Path.of("..", "examples", "long-stream");
  static final String PROJECT = FOLDER.resolve("stream.yaml").toString();
  static final String SUPPLIER = FOLDER.resolve("supplier").toString();

  private LongStream() {}
}
