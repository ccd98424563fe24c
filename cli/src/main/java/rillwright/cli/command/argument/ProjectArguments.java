package rillwright.cli.command.argument;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rillwright.cli.command.output.NoAnswer;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.condition.ProjectConditions;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.output.InputFiles;
import rillwright.cli.study.Request;

/** The project that a command is about. */
public final class ProjectArguments {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Parameters(paramLabel = "FILE", description = "The project file, YAML or JSON.")
  private Path file;

  @Option(
      names = "--set",
      paramLabel = "CHANGE",
      description =
          "Changes a value first: \"lines.upper.valve.open=60 %%\". A second part of a kind is"
              + " \"valve 2\". Repeatable.")
  private List<String> changes = List.of();

  @Option(
      names = "--sheets",
      paramLabel = "FOLDER",
      description = "Allows data sheets in this folder, outside the project's own; repeatable.")
  private List<Path> sheetFolders = List.of();

  /**
   * The project, with changes applied. Conditions that it names are read too, so that what is wrong
   * with them is reported whether or not they are asked for.
   *
   * @throws rillwright.cli.file.fault.InvalidInput if the file, a change or a condition is wrong
   */
  public Project read() {
    return read(List.of());
  }

  /**
   * The same where data sheets may lie in other folders too.
   *
   * @param more folders that another option names
   */
  public Project read(List<Path> more) {
    return read(file, changes, more);
  }

  /** Another file, without changes. */
  public Project readOther(Path other) {
    return read(other, List.of(), List.of());
  }

  private Project read(Path asked, List<String> with, List<Path> more) {
    return ProgressBar.watched(
        command.commandLine().getErr(), unseen -> readUnwatched(asked, with, more));
  }

  private Project readUnwatched(Path asked, List<String> with, List<Path> more) {
    sheetFolders.forEach(SheetFolder::requireFolder);
    List<Path> folders = new ArrayList<>(sheetFolders);
    folders.addAll(more);
    Project project = ProjectReader.read(asked, with, folders);
    if (project.tree().find("conditions").isPresent()) {
      ProjectConditions.of(project, List.of());
    }
    return project;
  }

  /** The project file. */
  public Path file() {
    return file;
  }

  /** The changes that are asked for, as written. */
  public List<String> changes() {
    return changes;
  }

  /** What is read for it: the project file and the data sheets that it names. */
  public InputFiles inputs(Project read) {
    return InputFiles.of(file, read);
  }

  /**
   * The answer to a request, watched on a terminal.
   *
   * @throws NoAnswer if the project has no balanced state
   */
  public <A> A ask(Request<A> request, Project read) {
    return ProgressBar.watched(
        command.commandLine().getErr(), progress -> Asking.ask(request, read, progress));
  }
}
