package rillwright.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** A picture beside the answer. */
final class ChartArguments {
  @Option(
      names = "--chart",
      paramLabel = "PICTURE",
      description = "Draws a picture too, a file that ends in .png or .svg.")
  private Optional<Path> path = Optional.empty();

  /**
   * The picture that is asked for, its name and folder checked.
   *
   * @param inputs what it must not be written over
   */
  Optional<PictureFile> picture(InputFiles inputs) {
    Optional<PictureFile> picture = path.map(PictureFile::new);
    picture.ifPresent(file -> file.check(inputs));
    return picture;
  }
}
