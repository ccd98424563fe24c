package rillwright.cli.file.job;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.wording.FileNames;

/**
 * Photographs in the folder of a project or below: what somebody else has written into a project
 * must not read other files of the user's. JPEG and PNG alone, none larger than {@link #MOST}.
 */
public final class PhotoFolder {
  /** The largest photograph, bytes. */
  public static final int MOST = 6_000_000;

  private static final int FIRST_BYTES = 8;

  private final Path folder;
  private final Map<String, Photo> found = new ConcurrentHashMap<>();

  /** Photographs in a folder, by paths that begin there. */
  public PhotoFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * The photograph of a path; it is looked at once.
   *
   * @throws InvalidInput if it is none, too large, elsewhere or cannot be read
   */
  public Photo find(String path) {
    return found.computeIfAbsent(path, this::look);
  }

  private Photo look(String path) {
    Path file = file(path);
    try (InputStream in = Files.newInputStream(file)) {
      Optional<Photo.Format> format = Photo.Format.of(in.readNBytes(FIRST_BYTES));
      long bytes = Files.size(file);
      if (format.isEmpty()) {
        throw wrong(path, "this is neither a JPEG nor a PNG picture; save the photograph as one");
      }
      if (bytes > MOST) {
        throw wrong(
            path, "the photograph is larger than 6 MB; save it smaller, 1600 pixels wide will do");
      }
      return new Photo(path, format.get(), bytes);
    } catch (IOException e) {
      throw wrong(path, "the photograph cannot be read");
    }
  }

  /**
   * What is in a photograph, in base 64.
   *
   * @throws InvalidInput as {@link #find}
   */
  public String base64(Photo photo) {
    Photo now = look(photo.path());
    try (InputStream in = Files.newInputStream(file(now.path()))) {
      return Base64.getEncoder().encodeToString(in.readNBytes(MOST));
    } catch (IOException e) {
      throw wrong(photo.path(), "the photograph cannot be read");
    }
  }

  /** Where a photograph is looked for; empty if that cannot be a path. */
  public Optional<Path> findPath(String path) {
    try {
      return Optional.of(folder.resolve(path));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private Path file(String path) {
    Path file = findPath(path).orElseThrow(() -> wrong(path, FileNames.whyNot(path)));
    try {
      Path real = file.toRealPath();
      if (!real.startsWith(folder.toAbsolutePath().toRealPath())) {
        throw wrong(path, "this lies outside the project's folder; put the photograph there");
      }
      if (!Files.isRegularFile(real)) {
        throw wrong(path, "this is not a file; name a JPEG or PNG picture");
      }
      return real;
    } catch (IOException e) {
      throw wrong(path, "there is no such file");
    }
  }

  private static InvalidInput wrong(String path, String message) {
    return new InvalidInput(Place.whole(path), message);
  }
}
