package rillwright.cli.command;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;

/** The project that a command is about. */
final class ProjectArguments {
  @Parameters(paramLabel = "FILE", description = "The project file, YAML or JSON.")
  private Path file;

  @Option(
      names = "--set",
      paramLabel = "CHANGE",
      description =
          "Changes a value before anything else: \"lines.upper.valve.open=60 %%\". A second part of"
              + " a kind is \"valve 2\". May be given several times.")
  private List<String> changes = List.of();

  /**
   * The project, with changes applied.
   *
   * @throws rillwright.cli.file.fault.InvalidInput if the file or a change is wrong
   */
  Project read() {
    return ProjectReader.read(file, changes);
  }

  /** The project file. */
  Path file() {
    return file;
  }

  /** What is read for it: the project file and the data sheets that it names. */
  InputFiles inputs(Project read) {
    return InputFiles.of(file, read);
  }

  /** What was changed on the command line, as written. */
  List<String> changes() {
    return List.copyOf(changes);
  }
}
