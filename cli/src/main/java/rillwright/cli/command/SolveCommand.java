package rillwright.cli.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rillwright.cli.command.argument.ConditionArguments;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.argument.ReportArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.report.json.ConditionsJson;
import rillwright.cli.report.json.SolveJson;
import rillwright.cli.report.text.conditions.ConditionsText;
import rillwright.cli.report.text.solve.SolveText;
import rillwright.cli.study.condition.InConditions;
import rillwright.cli.study.condition.SolvedConditions;
import rillwright.cli.study.mend.FirstRequest;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.solve.SolveRequest;
import rillwright.cli.study.solve.Solved;

/** What flows where, at what head, how thick the sheets are, what the pumps draw. */
@Command(
    name = "solve",
    description = {
      "Solves the network: flow and depth over each fall.",
      "It also lists operating points, levels, pressures, warnings, and the readings to expect on",
      "the day."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright solve pond.yaml",
      "  rillwright solve pond.yaml --set \"lines.upper.valve.open=60 %%\"",
      "  rillwright solve pond.yaml --set \"lines.supply.pipe.size=3 in\"",
      "  rillwright solve pond.yaml --conditions      in autumn, in cold water, with a low pond"
          + " ...",
      "  rillwright solve pond.yaml --short           what to do first, the falls, the warnings",
      "  rillwright solve pond.yaml --strict          1 if a fall gets less than its target",
      "  rillwright solve pond.yaml --format json     for programs, in SI units"
    })
public final class SolveCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Option(
      names = "--strict",
      description =
          "Ends with exit status 1 if a fall or outlet gets less than its target or a chamber is"
              + " drawn down to its pump's intake.")
  private boolean strict;

  @Option(
      names = "--short",
      description = "Shows what to do first, the falls and the warnings only, as text or page.")
  private boolean brief;

  @Mixin private ConditionArguments conditions;

  @Mixin private ReportArguments report;

  @Override
  public Integer call() {
    Project read = project.read();
    report.check(project.inputs(read));
    ChosenPumps.require(read);
    return conditions.areAsked() ? inConditions(read) : asWritten(read);
  }

  private int asWritten(Project read) {
    Solved solved = project.ask(new SolveRequest(), read);
    report.print(
        () -> SolveJson.of(solved),
        () -> {
          MendAnswer first = project.ask(new FirstRequest(solved), read);
          return brief ? SolveText.brief(solved, first) : SolveText.of(solved, first);
        });
    return status(solved.fallsShort());
  }

  private int inConditions(Project read) {
    conditions.requireFit(read, ChosenPumps::require);
    SolvedConditions answer =
        new SolvedConditions(
            project.ask(new InConditions<>(new SolveRequest(), conditions.names()), read),
            read.network());
    report.print(() -> ConditionsJson.of(answer), () -> ConditionsText.of(answer));
    return answer.solved().lacksEveryBalance()
        ? ExitStatus.NO_BALANCE
        : status(answer.fallsShort());
  }

  private int status(boolean fallsShort) {
    return strict && fallsShort ? ExitStatus.TARGET_MISSED : ExitStatus.DONE;
  }
}
