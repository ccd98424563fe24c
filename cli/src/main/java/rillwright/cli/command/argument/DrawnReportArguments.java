package rillwright.cli.command.argument;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import rillwright.cli.command.output.PictureFile;
import rillwright.cli.output.InputFiles;
import rillwright.cli.report.page.Page;
import rillwright.curves.chart.content.Chart;

/** In which form a command answers that can draw a picture too. */
public final class DrawnReportArguments extends ReportArguments {
  @Option(
      names = "--chart",
      paramLabel = "PICTURE",
      description = "Draws a picture too, .png or .svg.")
  private Optional<Path> chart = Optional.empty();

  /** Whether a picture in a file of its own is asked for. */
  public boolean draws() {
    return chart.isPresent();
  }

  @Override
  public void check(InputFiles inputs) {
    super.check(inputs);
    chart.map(PictureFile::new).ifPresent(file -> file.check(inputs.and(to(), "the report")));
  }

  /** Draws the picture too, where it is asked for. */
  @Override
  public void print(
      Supplier<String> json, Supplier<Page> page, Supplier<Optional<? extends Chart>> picture) {
    if (!draws()) {
      super.print(json, page, picture);
      return;
    }
    Optional<? extends Chart> drawn = picture.get();
    drawn.ifPresent(this::drawOnly);
    super.print(json, page, () -> drawn);
  }

  /** Draws the picture, where it is asked for, without an answer. */
  public void drawOnly(Chart picture) {
    chart.ifPresent(path -> new PictureFile(path).write(picture));
  }
}
