package rillwright.cli.command.argument;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rillwright.cli.study.choice.PumpsRequest;

/** Over how many years cost is counted. */
public final class CostArguments {
  private static final double MOST_YEARS = 100;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--years",
      paramLabel = "YEARS",
      description = "Counts cost over this many years; default 10.")
  private double years = PumpsRequest.USUAL_YEARS;

  /** The years, above 0. */
  public double years() {
    if (!(years > 0) || years > MOST_YEARS) {
      throw new ParameterException(
          spec.commandLine(), "--years is " + years + "; it must be above 0 and 100 at most");
    }
    return years;
  }
}
