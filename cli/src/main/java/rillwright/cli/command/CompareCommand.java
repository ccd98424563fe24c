package rillwright.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.argument.ReportArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.command.output.NoAnswer;
import rillwright.cli.file.Project;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.output.InputFiles;
import rillwright.cli.report.json.CompareJson;
import rillwright.cli.report.text.compare.CompareText;
import rillwright.cli.study.compare.Compared;
import rillwright.cli.study.solve.SolveRequest;
import rillwright.cli.study.solve.Solved;

/** Two projects side by side. */
@Command(
    name = "compare",
    description = {
      "Puts two projects side by side: what differs in the files, and every figure of both.",
      "Give two files, or one file and --set for the same project with and without a change."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright compare before.yaml after.yaml",
      "  rillwright compare pond.yaml --set \"lines.supply.pipe.size=3 in\"",
      "  rillwright compare pond.yaml after.yaml --format html --to compared.html"
    })
public final class CompareCommand implements Callable<Integer> {
  @Spec private CommandSpec command;

  @Mixin private ProjectArguments project;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "OTHER",
      description = "A second project file, to compare with the first.")
  private Optional<Path> other = Optional.empty();

  @Mixin private ReportArguments report;

  @Override
  public Integer call() {
    requireTwo();
    Project a = project.readOther(project.file());
    Project b = other.map(project::readOther).orElseGet(project::read);
    report.check(inputs(a, b));
    ChosenPumps.require(a);
    ChosenPumps.require(b);
    String nameA = name(project.file(), other);
    String nameB =
        other
            .map(it -> name(it, Optional.of(project.file())))
            .orElse(nameA + " with " + String.join("; ", project.changes()));
    Compared compared = Compared.of(a, solved(a, nameA), b, solved(b, nameB));
    report.print(() -> CompareJson.of(compared), () -> CompareText.of(compared, nameA, nameB));
    return ExitStatus.DONE;
  }

  /** A file's name, with its way where the other one's name is the same. */
  private static String name(Path file, Optional<Path> beside) {
    boolean apart = beside.filter(it -> it.getFileName().equals(file.getFileName())).isEmpty();
    return (apart ? file.getFileName() : file).toString();
  }

  private void requireTwo() {
    if (other.isPresent() && !project.changes().isEmpty()) {
      throw new ParameterException(
          command.commandLine(),
          "two files are compared as they stand; leave out --set, or name one file");
    }
    if (other.isEmpty() && project.changes().isEmpty()) {
      throw new ParameterException(
          command.commandLine(),
          "a second file is missing; name it, or write with --set what is changed:"
              + " --set \"lines.supply.pipe.size=3 in\"");
    }
  }

  private InputFiles inputs(Project a, Project b) {
    InputFiles inputs = project.inputs(a);
    return other.map(it -> inputs.and(InputFiles.of(it, b))).orElse(inputs);
  }

  /** A project's balance; which one has none is said by its name. */
  private Solved solved(Project read, String name) {
    try {
      return project.ask(new SolveRequest(), read);
    } catch (NoAnswer none) {
      throw new NoAnswer(name + ": " + none.getMessage());
    }
  }
}
