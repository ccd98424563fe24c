package rillwright.cli.command;

import java.util.OptionalDouble;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rillwright.cli.file.site.Running;
import rillwright.solver.trial.RunningTerms;

/** Over how many years cost is counted. */
final class CostArguments {
  private static final double MOST_YEARS = 100;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--years",
      paramLabel = "YEARS",
      description = "Years over which cost is counted; 10 if not given.")
  private double years = 10;

  /** What running costs in a project: all day and all year where its file does not say. */
  RunningTerms terms(Running running) {
    if (!(years > 0) || years > MOST_YEARS) {
      throw new ParameterException(
          spec.commandLine(), "--years is " + years + "; it must be above 0 and 100 at most");
    }
    OptionalDouble price =
        running.price().isPresent()
            ? OptionalDouble.of(running.price().get().amount())
            : OptionalDouble.empty();
    return new RunningTerms(running.hoursAYear(), price, years);
  }
}
