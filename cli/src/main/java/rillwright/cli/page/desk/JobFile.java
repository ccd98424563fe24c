package rillwright.cli.page.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.FileBytes;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.output.OutputFile;

/**
 * A job's file on the disk, with its version before the last saving and its draft beside it. What
 * is written is written whole or not at all.
 */
final class JobFile {
  private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
  private static final byte[] NOTHING = {};

  private final Path path;

  /** The file as it was read or written last; nothing if it is still to be made. */
  private byte[] known;

  private JobFile(Path path, byte[] known) {
    this.path = path;
    this.known = known;
  }

  /**
   * A file.
   *
   * @throws InvalidInput if it is there and cannot be read
   */
  static JobFile open(Path path) {
    JobFile file = new JobFile(path, NOTHING);
    if (Files.exists(path)) {
      file.known = FileBytes.read(path);
      file.text();
    }
    return file;
  }

  Path path() {
    return path;
  }

  /** Its text as it was read or written last; empty if it is still to be made. */
  String text() {
    return known.length == 0 ? "" : SourceText.of(path.toString(), known).text();
  }

  /** Whether it is another one on the disk than it was when it was read or written last. */
  boolean changedOnDisk() {
    return !Arrays.equals(onDisk(), known);
  }

  private byte[] onDisk() {
    return Files.exists(path) ? FileBytes.read(path) : NOTHING;
  }

  /**
   * Takes it as it is on the disk now.
   *
   * @throws InvalidInput if it cannot be read
   */
  void takeFromDisk() {
    byte[] there = onDisk();
    if (there.length > 0) {
      SourceText.of(path.toString(), there);
    }
    known = there;
  }

  /**
   * Writes it, the version before beside it under its name and {@code .previous}.
   *
   * @throws InvalidInput if it was changed on the disk meanwhile or cannot be written
   */
  void write(String text) {
    if (changedOnDisk()) {
      throw wrong("not saved: the file was changed on the disk meanwhile");
    }
    byte[] plain = text.getBytes(StandardCharsets.UTF_8);
    byte[] bytes = plain;
    if (known.length >= MARK.length && Arrays.equals(MARK, 0, 3, known, 0, 3)) {
      bytes = Arrays.copyOf(MARK, MARK.length + plain.length);
      System.arraycopy(plain, 0, bytes, MARK.length, plain.length);
    }
    if (known.length > 0) {
      new OutputFile(beside(".previous"), "version before").write(known);
    }
    new OutputFile(path, "project file").write(bytes);
    known = bytes;
  }

  /** What an earlier page kept; empty if there is no draft. */
  Optional<Draft> draft() {
    Path draft = beside(".draft");
    return Files.exists(draft) ? Draft.read(SourceText.read(draft).text()) : Optional.empty();
  }

  /** Keeps unsaved changes; what is wrong if they cannot be kept here. */
  Optional<String> keep(Draft draft) {
    try {
      new OutputFile(beside(".draft"), "draft")
          .write(draft.text().getBytes(StandardCharsets.UTF_8));
      return Optional.empty();
    } catch (InvalidInput wrong) {
      return Optional.of(
          "Unsaved changes cannot be kept in a draft beside the file: save before you leave.");
    }
  }

  /** Nothing is unsaved; what is wrong if a draft cannot be removed. */
  Optional<String> forgetDraft() {
    try {
      Files.deleteIfExists(beside(".draft"));
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of("The draft beside the file cannot be removed: it will be offered again.");
    }
  }

  private Path beside(String ending) {
    return path.resolveSibling(path.getFileName() + ending);
  }

  private InvalidInput wrong(String message) {
    return new InvalidInput(Place.whole(path.toString()), message);
  }
}
