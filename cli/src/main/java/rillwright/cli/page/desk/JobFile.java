package rillwright.cli.page.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.FileBytes;
import rillwright.cli.file.tree.SourceText;

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
    try {
      if (known.length > 0) {
        whole(beside(".previous"), known);
      }
      whole(Files.exists(path) ? path.toRealPath() : path, bytes);
    } catch (IOException e) {
      throw wrong("not saved: the file cannot be written here; look at its folder's permissions");
    }
    known = bytes;
  }

  /** What an earlier page kept; empty if there is no draft. */
  Optional<Draft> draft() {
    Path draft = beside(".draft");
    return Files.exists(draft) ? Draft.read(SourceText.read(draft).text()) : Optional.empty();
  }

  /** Keeps unsaved changes; what cannot be kept is not, and the page goes on. */
  void keep(Draft draft) {
    try {
      whole(beside(".draft"), draft.text().getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw wrong("unsaved changes cannot be kept in a draft here; save them yourself");
    }
  }

  /** Nothing is unsaved. */
  void forgetDraft() {
    try {
      Files.deleteIfExists(beside(".draft"));
    } catch (IOException e) {
      throw wrong("the draft beside the file cannot be removed");
    }
  }

  /**
   * Puts a file into a folder beside it, where none lies under its name.
   *
   * @return where it lies, from the file's folder on
   * @throws InvalidInput if another file lies there, the name is none, or it cannot be written
   */
  String putBeside(String folder, String name, String text) {
    if (!name.matches("[A-Za-z0-9][A-Za-z0-9 ._-]{0,60}")) {
      throw wrong("a data sheet's name has letters, digits, blanks, dots and dashes");
    }
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Path target = path.resolveSibling(folder).resolve(name);
    try {
      Files.createDirectories(target.getParent());
      Path home = path.toAbsolutePath().getParent().toRealPath();
      if (!target.getParent().toRealPath().startsWith(home)) {
        throw wrong("the folder " + folder + " lies elsewhere; nothing is written there");
      }
      if (!Files.exists(target)) {
        whole(target, bytes);
      } else if (!Arrays.equals(Files.readAllBytes(target), bytes)) {
        throw wrong("another data sheet is there already under the name " + folder + "/" + name);
      }
    } catch (IOException e) {
      throw wrong("the data sheet cannot be written beside the project");
    }
    return folder + "/" + name;
  }

  private Path beside(String ending) {
    return path.resolveSibling(path.getFileName() + ending);
  }

  private static void whole(Path target, byte[] bytes) throws IOException {
    Path unfinished = target.toAbsolutePath().resolveSibling("." + UUID.randomUUID());
    try {
      Files.write(unfinished, bytes);
      Files.move(unfinished, target, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(unfinished);
    }
  }

  private InvalidInput wrong(String message) {
    return new InvalidInput(Place.whole(path.toString()), message);
  }
}
