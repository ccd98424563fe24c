package rillwright.cli.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rillwright.cli.file.Project;
import rillwright.cli.report.Solved;
import rillwright.cli.report.conditions.ConditionsAnswer;
import rillwright.cli.report.json.ConditionsJson;
import rillwright.cli.report.json.SolveJson;
import rillwright.cli.report.text.Ink;
import rillwright.cli.report.text.conditions.ConditionsText;
import rillwright.cli.report.text.solve.SolveText;
import rillwright.solver.steady.SteadyStateFinder;

/** What flows where, at what head, how thick the sheets are, what the pumps draw. */
@Command(
    name = "solve",
    description = {
      "Balances the network of a project and tells what flows over each fall.",
      "It also tells where the pumps run, how the water stands, what to know about it and what to",
      "read on the day."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright solve pond.yaml",
      "  rillwright solve pond.yaml --set \"lines.upper.valve.open=60 %%\"",
      "  rillwright solve pond.yaml --set \"lines.supply.pipe.size=3 in\"",
      "  rillwright solve pond.yaml --conditions      in autumn, in cold water, with a low pond"
          + " ...",
      "  rillwright solve pond.yaml --strict          1 if a fall gets less than its wish",
      "  rillwright solve pond.yaml --format json     for a program, in SI units"
    })
public final class SolveCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private ProjectArguments project;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = Format.Reader.class,
      description = "text (default) or json.")
  private Format format = Format.TEXT;

  @Option(
      names = "--strict",
      description = "Ends with exit status 1 if a fall or outlet gets less than its wish.")
  private boolean strict;

  @Mixin private ConditionArguments conditions;

  @Mixin
  @SuppressWarnings("UnusedVariable") // set and read by picocli
  private StandardOptions standard;

  @Override
  public Integer call() {
    Project read = project.readAlone();
    ConditionsCheck check = project.conditionsOf(read);
    ChosenPumps.require(read);
    return conditions.areAsked() ? inConditions(read, check) : asWritten(read, check);
  }

  private int asWritten(Project read, ConditionsCheck check) {
    Solved solved =
        Solved.of(
            read.title(), Shown.of(read), read.running(), SteadyStateFinder.find(read.network()));
    String report =
        format == Format.JSON
            ? SolveJson.of(solved, project.changes())
            : SolveText.of(solved, project.changes(), Ink.ofTerminal());
    check.require();
    return told(report, solved.missesAWish());
  }

  private int inConditions(Project read, ConditionsCheck check) {
    ConditionsAnswer answer = ConditionsRun.of(read, project.file(), conditions);
    String report =
        format == Format.JSON
            ? ConditionsJson.of(answer)
            : ConditionsText.of(answer, Ink.ofTerminal());
    check.require();
    return told(report, answer.missesAWish());
  }

  private int told(String report, boolean missesAWish) {
    spec.commandLine().getOut().print(report);
    spec.commandLine().getOut().flush();
    return strict && missesAWish ? ExitStatus.WISH_MISSED : ExitStatus.DONE;
  }
}
