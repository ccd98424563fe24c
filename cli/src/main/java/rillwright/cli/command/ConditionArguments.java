package rillwright.cli.command;

import java.util.List;
import picocli.CommandLine.Option;

/** In which conditions a project is looked at. */
final class ConditionArguments {
  @Option(
      names = "--conditions",
      description =
          "Looks at it in all conditions that the file names (autumn, cold water, low pond ...), or"
              + " else in usual ones, and judges by the worst.")
  private boolean all;

  @Option(
      names = "--condition",
      paramLabel = "NAME",
      description =
          "Looks at it in this condition only, with --conditions too; may be given several times."
              + " \"as written\" is the file as it is.")
  private List<String> named = List.of();

  /** Whether it is to be looked at in conditions at all. */
  boolean areAsked() {
    return all || !named.isEmpty();
  }

  /** The conditions asked for by name, which narrow all to these; empty for all. */
  List<String> names() {
    return named;
  }
}
