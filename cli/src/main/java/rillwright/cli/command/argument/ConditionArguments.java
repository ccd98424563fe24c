package rillwright.cli.command.argument;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine.Option;
import rillwright.cli.file.Project;
import rillwright.cli.need.EachCondition;

/** In which conditions a project is looked at. */
public final class ConditionArguments {
  @Option(
      names = "--conditions",
      description =
          "Runs all conditions that the file names (autumn, cold water, low pond ...), or usual"
              + " ones, and judges by the worst.")
  private boolean all;

  @Option(
      names = "--condition",
      paramLabel = "NAME",
      description = "Runs one named condition; repeatable. \"as written\" is the file as it is.")
  private List<String> named = List.of();

  /** Whether it is to be looked at in conditions at all. */
  public boolean areAsked() {
    return all || !named.isEmpty();
  }

  /** Their names as a request takes them, none for all; empty if none are asked for. */
  public Optional<List<String>> asked() {
    return areAsked() ? Optional.of(named) : Optional.empty();
  }

  /**
   * Refuses a project that does not fit a study in one of the conditions asked for.
   *
   * @param fit refuses one that does not
   */
  public void requireFit(Project project, Consumer<Project> fit) {
    if (areAsked()) {
      EachCondition.require(project, named, fit);
    }
  }

  /** The conditions asked for by name, which narrow all to these; empty for all. */
  public List<String> names() {
    return named;
  }
}
