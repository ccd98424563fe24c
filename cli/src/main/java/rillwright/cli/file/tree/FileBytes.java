package rillwright.cli.file.tree;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.wording.Beside;
import rillwright.cli.wording.FileNames;

/** Reads the bytes of files of a bounded size. */
public final class FileBytes {
  /** The largest file that is read, bytes. */
  public static final int MOST = 64_000_000;

  private FileBytes() {}

  /**
   * The bytes of a file.
   *
   * @throws InvalidInput if it is missing, a folder, may not be read or is larger than 64 MB
   */
  public static byte[] read(Path file) {
    String name = file.toString();
    if (name.isEmpty()) {
      throw wrong(name, "the name of a file is empty; name one, for example pond.yaml");
    }
    if (Files.isDirectory(file)) {
      throw wrong(name, "this is a folder; name a file in it");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] content = in.readNBytes(MOST + 1);
      if (content.length > MOST) {
        throw wrong(name, "the file is larger than 64 MB; no project needs that");
      }
      return content;
    } catch (NoSuchFileException e) {
      String whole = file.isAbsolute() ? name : System.getProperty("user.dir") + "/" + name;
      throw wrong(
          name,
          FileNames.canWrite(whole)
              ? "there is no such file" + Beside.meant(file)
              : FileNames.whyNot(whole));
    } catch (AccessDeniedException e) {
      throw wrong(name, "the file may not be read; look at its permissions");
    } catch (IOException e) {
      throw wrong(name, "the file cannot be read");
    }
  }

  private static InvalidInput wrong(String name, String message) {
    return new InvalidInput(Place.whole(name), message);
  }
}
