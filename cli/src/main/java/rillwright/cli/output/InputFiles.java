package rillwright.cli.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.job.Photo;
import rillwright.cli.file.job.PhotoFolder;
import rillwright.cli.file.pump.FolderSheets;
import rillwright.cli.file.pump.NamedSheets;
import rillwright.cli.file.pump.SheetFolder;

/**
 * The files that a command reads; nothing is ever written over one of them.
 *
 * @param files all of them
 */
public record InputFiles(List<InputFile> files) {
  public InputFiles {
    files = List.copyOf(files);
  }

  /**
   * A file that is read.
   *
   * @param path where
   * @param what it is: "the project file"
   */
  public record InputFile(Path path, String what) {}

  /** The project file and the data sheets that the project names, in its conditions too. */
  public static InputFiles of(Path file, Project project) {
    List<InputFile> files = new ArrayList<>(List.of(new InputFile(file, "the project file")));
    FolderSheets folder = new FolderSheets(file.resolveSibling(""));
    for (String path : NamedSheets.in(project.tree())) {
      folder
          .find(path)
          .ifPresent(
              sheet -> files.add(new InputFile(sheet, "a data sheet that the project names")));
    }
    PhotoFolder photos = new PhotoFolder(file.resolveSibling(""));
    for (Photo photo : project.papers().photos()) {
      photos
          .findPath(photo.path())
          .ifPresent(path -> files.add(new InputFile(path, "a photograph of the project")));
    }
    return new InputFiles(files);
  }

  /**
   * These and a file that an option names.
   *
   * @param what it is: "the file of readings"
   */
  public InputFiles and(Optional<Path> file, String what) {
    List<InputFile> more = new ArrayList<>(files);
    file.ifPresent(path -> more.add(new InputFile(path, what)));
    return new InputFiles(more);
  }

  /** These and others. */
  public InputFiles and(InputFiles others) {
    List<InputFile> more = new ArrayList<>(files);
    more.addAll(others.files);
    return new InputFiles(more);
  }

  /**
   * These and the data sheets of a folder.
   *
   * @throws rillwright.cli.file.fault.InvalidInput if it is none or has none
   */
  public InputFiles andSheetsOf(Path folder) {
    List<InputFile> more = new ArrayList<>(files);
    for (Path sheet : SheetFolder.list(folder)) {
      more.add(new InputFile(sheet, "a data sheet of the folder " + folder));
    }
    return new InputFiles(more);
  }

  /** What of these a path leads to, by whatever name or link; empty if to none of them. */
  public Optional<String> find(Path path) {
    return files.stream().filter(file -> isSame(file.path(), path)).map(InputFile::what).findAny();
  }

  private static boolean isSame(Path one, Path other) {
    try {
      return Files.isSameFile(one, other);
    } catch (IOException e) {
      return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
    }
  }
}
