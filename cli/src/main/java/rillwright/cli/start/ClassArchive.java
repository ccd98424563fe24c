package rillwright.cli.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;

/**
 * An archive of classes, with a seal beside it that says what the build laid there: a Java machine
 * that maps an archive cut short or with bits flipped crashes.
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
    Files.writeString(archive.seal(), archive.sum(), StandardCharsets.US_ASCII);
  }

  /** Whether it is there, whole, as it was sealed. */
  boolean isWhole() {
    try {
      return Files.isRegularFile(file)
          && Files.readString(seal(), StandardCharsets.US_ASCII).equals(sum());
    } catch (IOException unreadable) {
      return false;
    }
  }

  private Path seal() {
    return file.resolveSibling(file.getFileName() + ".seal");
  }

  /** Its length and CRC-32 (ISO 3309), which no flipped bit or lost end leaves as they are. */
  private String sum() throws IOException {
    byte[] content = Files.readAllBytes(file);
    CRC32 crc = new CRC32();
    crc.update(content);
    return content.length + " " + Long.toHexString(crc.getValue()) + "\n";
  }
}
