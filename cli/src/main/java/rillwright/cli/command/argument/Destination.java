package rillwright.cli.command.argument;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where an answer goes: standard output or a file. */
public class Destination extends Output {
  @Option(names = "--to", paramLabel = "OUTPUT", description = "Writes the answer to this file.")
  private Optional<Path> to = Optional.empty();

  /** The file to write, if it is not standard output. */
  public final Optional<Path> to() {
    return to;
  }

  @Override
  final Optional<Path> answerTo() {
    return to;
  }
}
