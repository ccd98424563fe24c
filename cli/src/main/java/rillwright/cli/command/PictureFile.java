package rillwright.cli.command;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.UUID;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.curves.chart.ChartWriter;
import rillwright.curves.chart.content.Chart;

/**
 * A picture to be written: whole or not at all, and never over a file that is read.
 *
 * @param path where; its ending says PNG or SVG
 */
record PictureFile(Path path) {
  private static final String PNG = ".png";
  private static final String SVG = ".svg";

  /**
   * Refuses a name that is no picture's or an input's, and a folder that takes no picture.
   *
   * @param inputs what it must not be written over
   */
  void check(InputFiles inputs) {
    if (!hasEnding(PNG) && !hasEnding(SVG)) {
      throw wrong("a picture's name ends in .png or .svg");
    }
    if (Files.isDirectory(path)) {
      throw wrong("this is a folder; a picture needs a name of its own");
    }
    inputs
        .find(path)
        .ifPresent(
            what -> {
              throw wrong("this is " + what + "; a picture needs a name of its own");
            });
    withNewFile(unfinished -> {});
  }

  private boolean hasEnding(String ending) {
    return path.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  /** Draws and writes. */
  void write(Chart chart) {
    write(hasEnding(SVG) ? ChartWriter.svg(chart) : ChartWriter.png(chart));
  }

  private void write(byte[] picture) {
    withNewFile(
        unfinished -> {
          Files.write(unfinished, picture);
          Files.move(unfinished, path, StandardCopyOption.REPLACE_EXISTING);
        });
  }

  /** What is done with a new file beside the picture. */
  private interface Writing {
    void to(Path unfinished) throws IOException;
  }

  private void withNewFile(Writing writing) {
    Path folder = path.toAbsolutePath().normalize().getParent();
    try {
      Path unfinished = folder.resolve("." + path.getFileName() + "." + UUID.randomUUID());
      try {
        Files.createFile(unfinished);
        writing.to(unfinished);
      } finally {
        Files.deleteIfExists(unfinished);
      }
    } catch (IOException e) {
      throw wrong("the picture cannot be written there: " + reason(e, folder));
    }
  }

  private static String reason(IOException e, Path folder) {
    if (!Files.isDirectory(folder)) {
      return "there is no such folder";
    }
    String said = e instanceof FileSystemException file ? file.getReason() : e.getMessage();
    return said == null ? "the folder takes no new files from you" : said;
  }

  private InvalidInput wrong(String message) {
    return new InvalidInput(Place.whole(path.toString()), message);
  }
}
