package rillwright.cli.file.pump;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * Folders that files must lie in, by whatever link they are reached.
 *
 * @param folders at least one
 */
record Fence(List<Path> folders) {
  Fence {
    folders = List.copyOf(folders);
  }

  /** Whether a file lies in one of the folders or below. */
  boolean holds(Path file) {
    Path real = real(file);
    return folders.stream().anyMatch(folder -> real.startsWith(real(folder)));
  }

  private static Path real(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException notThere) {
      return path.toAbsolutePath().normalize();
    }
  }
}
