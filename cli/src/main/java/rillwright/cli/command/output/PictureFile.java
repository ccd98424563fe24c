package rillwright.cli.command.output;

import java.nio.file.Path;
import java.util.Locale;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.output.InputFiles;
import rillwright.cli.output.OutputFile;
import rillwright.curves.chart.ChartWriter;
import rillwright.curves.chart.content.Chart;

/**
 * A picture to be written.
 *
 * @param path where; its ending says PNG or SVG
 */
public record PictureFile(Path path) {
  private static final String PNG = ".png";
  private static final String SVG = ".svg";

  /**
   * Refuses a name that is no picture's, and whatever {@link OutputFile#check} does.
   *
   * @param inputs what it must not be written over
   */
  public void check(InputFiles inputs) {
    if (!hasEnding(PNG) && !hasEnding(SVG)) {
      throw new InvalidInput(Place.whole(path.toString()), "a picture's name ends in .png or .svg");
    }
    file().check(inputs);
  }

  /** Refuses a name that nobody has asked for where a file of that name lies already. */
  public void refuseUnasked() {
    file().refuseUnasked();
  }

  private boolean hasEnding(String ending) {
    return path.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  private OutputFile file() {
    return new OutputFile(path, "picture");
  }

  /** Draws and writes. */
  public void write(Chart chart) {
    file().write(hasEnding(SVG) ? ChartWriter.svg(chart) : ChartWriter.png(chart));
  }
}
