package rillwright.cli.command.argument;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rillwright.cli.command.output.PictureFile;
import rillwright.cli.output.InputFiles;
import rillwright.curves.chart.content.Chart;
import rillwright.curves.wording.PlainText;

/** The picture that a command is there to draw, and the words or points that go with it. */
public final class PictureArguments {
  @Option(
      names = "--to",
      paramLabel = "PICTURE",
      description = "Writes this file, .png or .svg; default: a .png named after the project.")
  private Optional<Path> to = Optional.empty();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = Format.OfPictures.class,
      description = "Output format: text (default) or json, which draws with --to only.")
  private Format format = Format.TEXT;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  /**
   * Refuses what cannot or must not be written, before anything is computed.
   *
   * @param project the project's file, beside which a picture without a name is written
   * @param suffix of such a picture's name, behind the project's
   * @param inputs what must not be written over
   * @return the picture to write, if there is one
   */
  public Optional<PictureFile> check(Path project, String suffix, InputFiles inputs) {
    if (format == Format.JSON && to.isEmpty()) {
      return Optional.empty();
    }
    PictureFile picture = new PictureFile(to.orElseGet(() -> beside(project, suffix)));
    if (to.isEmpty()) {
      picture.refuseUnasked();
    }
    picture.check(inputs);
    return Optional.of(picture);
  }

  private static Path beside(Path project, String suffix) {
    String name = project.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return project.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + suffix + ".png");
  }

  /**
   * Draws the picture, then prints what goes with it.
   *
   * @param file where; nothing is drawn without one
   * @param json the answer for a program
   * @param words the answer for people, before the name of the picture
   */
  public void print(
      Optional<PictureFile> file,
      Supplier<? extends Chart> picture,
      Supplier<String> json,
      Supplier<String> words) {
    file.ifPresent(it -> it.write(picture.get()));
    PrintWriter out = command.commandLine().getOut();
    if (format == Format.JSON) {
      out.print(json.get());
    } else {
      out.print(words.get());
      file.ifPresent(
          it -> out.print("Picture: " + PlainText.harmless(it.path().toString()) + "\n"));
    }
    out.flush();
  }
}
