package rillwright.cli.command.argument;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How many of one pump may stand together. */
public final class TogetherArguments {
  private static final int MOST = 9;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--max-pumps",
      paramLabel = "N",
      description = "Tries up to N of each pump, in parallel and, if not submersible, in series.")
  private int upTo = 1;

  /** The number, 1 to 9. */
  public int upTo() {
    if (upTo < 1 || upTo > MOST) {
      throw new ParameterException(
          spec.commandLine(), "--max-pumps is " + upTo + "; it must be 1 to " + MOST);
    }
    return upTo;
  }
}
