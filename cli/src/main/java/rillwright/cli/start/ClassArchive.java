package rillwright.cli.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * An archive of classes, with a seal beside it that says how long it is: a Java machine that maps
 * an archive cut short crashes. Bits that have flipped it finds itself, if asked to verify.
 *
 * @param file the archive
 */
public record ClassArchive(Path file) {

  /**
   * Seals the archive that the build has made.
   *
   * @param arguments its path
   */
  public static void main(String[] arguments) throws IOException {
    ClassArchive archive = new ClassArchive(Path.of(arguments[0]));
    Files.writeString(archive.seal(), archive.length(), StandardCharsets.US_ASCII);
  }

  /** Whether it is there, as long as it was sealed. */
  boolean isWhole() {
    try {
      return Files.isRegularFile(file)
          && Files.readString(seal(), StandardCharsets.US_ASCII).equals(length());
    } catch (IOException unreadable) {
      return false;
    }
  }

  private Path seal() {
    return file.resolveSibling(file.getFileName() + ".seal");
  }

  private String length() throws IOException {
    return Files.size(file) + "\n";
  }
}
