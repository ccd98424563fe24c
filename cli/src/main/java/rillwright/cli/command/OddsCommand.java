package rillwright.cli.command;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rillwright.cli.command.argument.ConditionArguments;
import rillwright.cli.command.argument.DrawnReportArguments;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.Unknowns;
import rillwright.cli.report.json.CasesJson;
import rillwright.cli.report.json.OddsJson;
import rillwright.cli.report.picture.OddsPicture;
import rillwright.cli.report.text.odds.OddsConditionsText;
import rillwright.cli.report.text.odds.OddsText;
import rillwright.cli.study.Effort;
import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.condition.InConditions;
import rillwright.cli.study.odds.OddsAnswer;
import rillwright.cli.study.odds.OddsRequest;
import rillwright.solver.study.uncertainty.SamplingPlan;

/** The chance that each fall gets its target, given what is not known exactly. */
@Command(
    name = "odds",
    description = {
      "Finds the chance that each fall gets its target, given what is not known exactly.",
      "Write such a value with its spread: \"run: 38 ft ± 4 ft\", \"clogged: 0 %% .. 40 %%\". The",
      "network is balanced with thousands of values drawn from it; the answer gives the chance,",
      "the expected flows, and which unknown contributes most to the spread.",
      "",
      "A tolerance a ± b (or a +- b) is right within b either way in 19 of 20 cases, cut off at",
      "what is possible; in a range a .. b all values are equally likely. The same",
      "seed gives the same answer."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright odds pond.yaml",
      "  rillwright odds pond.yaml --chart odds.png",
      "  rillwright odds pond.yaml --set \"lines.intake.skimmer.clogged=0 %% .. 40 %%\"",
      "  rillwright odds pond.yaml --samples 2000 --seed 7 --format json"
    })
public final class OddsCommand implements Callable<Integer> {
  private static final int MOST_THREADS = 256;

  @Spec private CommandSpec spec;

  @Mixin private ProjectArguments project;

  @Option(
      names = "--samples",
      paramLabel = "NUMBER",
      description = "Balances this many samples, 100 to 1000000; default 10000.")
  private int samples = 10_000;

  @Option(
      names = "--seed",
      paramLabel = "NUMBER",
      description = "Draws the samples from this whole number; default 1.")
  private long seed = 1;

  @Option(
      names = "--threads",
      paramLabel = "NUMBER",
      description =
          "Uses this many threads; default: as many as the machine has cores. The answer does not"
              + " depend on it.")
  private int threads = Runtime.getRuntime().availableProcessors();

  @Mixin private ConditionArguments conditions;

  @Mixin private DrawnReportArguments report;

  @Override
  public Integer call() {
    requireBetween("--samples", samples, OddsRequest.LEAST_SAMPLES, OddsRequest.MOST_SAMPLES);
    requireBetween("--threads", threads, 1, MOST_THREADS);
    Project read = project.read();
    report.check(project.inputs(read));
    ChosenPumps.require(read);
    Unknowns.requireForOdds(read);
    OddsRequest request = new OddsRequest(new SamplingPlan(samples, seed, threads));
    if (conditions.areAsked()) {
      inConditions(read, request);
    } else {
      asWritten(read, request);
    }
    return ExitStatus.DONE;
  }

  private void asWritten(Project read, OddsRequest request) {
    OddsAnswer answer = project.ask(request, read);
    tellSpeed(answer.effort());
    report.print(
        () -> OddsJson.of(answer), () -> OddsText.of(answer), () -> OddsPicture.of(answer));
  }

  private void inConditions(Project read, OddsRequest request) {
    conditions.requireFit(read, ChosenPumps::require);
    Cases<OddsAnswer> answer = project.ask(new InConditions<>(request, conditions.names()), read);
    answer.cases().forEach(one -> one.answer().ifPresent(odds -> tellSpeed(odds.effort())));
    report.print(
        () -> CasesJson.ofOdds(answer),
        () -> OddsConditionsText.of(answer),
        () -> OddsPicture.of(answer));
  }

  private void requireBetween(String option, int value, int least, int most) {
    if (value < least || value > most) {
      throw new ParameterException(
          spec.commandLine(), option + " is " + value + "; it must be " + least + " to " + most);
    }
  }

  private void tellSpeed(Effort effort) {
    PrintWriter err = spec.commandLine().getErr();
    err.println(
        String.format(
            Locale.ROOT,
            "%,d samples in %.1f s on %d %s: %,.0f solves a second",
            effort.solves(),
            effort.seconds(),
            threads,
            threads == 1 ? "thread" : "threads",
            effort.solvesPerSecond()));
    err.flush();
  }
}
