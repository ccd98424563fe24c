package rillwright.cli.output;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;

/**
 * A file to be written: whole or not at all, and never over a file that is read.
 *
 * @param path where
 * @param what it is: "picture"
 */
public record OutputFile(Path path, String what) {
  /**
   * Refuses the name of an input, of what is no file, and a folder that takes no new files.
   *
   * @param inputs what it must not be written over
   */
  public void check(InputFiles inputs) {
    if (Files.exists(path) && !Files.isRegularFile(path)) {
      String is = Files.isDirectory(path) ? "a folder" : "not a file to overwrite";
      throw wrong("this is " + is + "; " + indefinite() + " needs its own name");
    }
    inputs
        .find(path)
        .ifPresent(
            input -> {
              throw wrong("this is " + input + "; " + indefinite() + " needs its own name");
            });
    if (Files.exists(path) && !Files.isWritable(path)) {
      throw wrong("this file may not be overwritten; choose another name");
    }
    withNewFile((unfinished, target) -> {});
  }

  private String indefinite() {
    return (what.startsWith("a") ? "an " : "a ") + what;
  }

  /** Refuses a name that nobody has asked for where a file of that name lies already. */
  public void refuseUnasked() {
    if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      throw wrong(
          "this file exists already; name the picture with --to (the same name replaces it)");
    }
  }

  /** Writes it. */
  public void write(byte[] bytes) {
    withNewFile(
        (unfinished, target) -> {
          Files.write(unfinished, bytes);
          Files.move(unfinished, target, StandardCopyOption.REPLACE_EXISTING);
        });
  }

  /** What is done with a new file beside the one to be written. */
  private interface Writing {
    void to(Path unfinished, Path target) throws IOException;
  }

  /** Where a link leads to is written, and the link stays. */
  private void withNewFile(Writing writing) {
    Path folder = path.toAbsolutePath().normalize().getParent();
    try {
      Path target = Files.exists(path) ? path.toRealPath() : path;
      Path unfinished = target.toAbsolutePath().resolveSibling("." + UUID.randomUUID());
      try {
        Files.createFile(unfinished);
        writing.to(unfinished, target);
      } finally {
        Files.deleteIfExists(unfinished);
      }
    } catch (IOException e) {
      throw wrong("the " + what + " cannot be written there: " + reason(e, folder));
    }
  }

  private static String reason(IOException e, Path folder) {
    if (!Files.isDirectory(folder)) {
      return "there is no such folder";
    }
    String said = e instanceof FileSystemException file ? file.getReason() : e.getMessage();
    return said == null ? "no permission to write into this folder" : said;
  }

  private InvalidInput wrong(String message) {
    return new InvalidInput(Place.whole(path.toString()), message);
  }
}
