package rillwright.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rillwright.cli.command.argument.ConditionArguments;
import rillwright.cli.command.argument.CostArguments;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.argument.ReportArguments;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.ImpossibleSheets;
import rillwright.cli.output.InputFiles;
import rillwright.cli.report.json.MendJson;
import rillwright.cli.report.text.mend.MendText;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.MendRequest;
import rillwright.cli.study.mend.change.Offered;

/** What would mend it. */
@Command(
    name = "mend",
    description = {
      "Finds what makes every fall get its target, and what it costs.",
      "Valves, cleaning, fittings, pumps, skimmers, crests and pipe are changed in the project one"
          + " by",
      "one and balanced: the gain at every fall, the cost, and what cannot help."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright mend falls.yaml",
      "  rillwright mend falls.yaml --from pumps          tries a supplier's pumps too",
      "  rillwright mend falls.yaml --sizes \"2 in, 3 in\"  tries these sizes of pipe only",
      "  rillwright mend stream.yaml --days 7             the pond must last a week too",
      "  rillwright mend falls.yaml --conditions           targets met in autumn and cold too",
      "  rillwright mend falls.yaml --format json         all that was tried, in SI units"
    })
public final class MendCommand implements Callable<Integer> {
  private static final int MOST_DAYS = 365;

  @Spec private CommandSpec spec;

  @Mixin private ProjectArguments project;

  @Option(
      names = "--from",
      paramLabel = "FOLDER",
      description = "Tries the data sheets of this folder too, files that end in .csv.")
  private Optional<Path> folder = Optional.empty();

  @Option(
      names = "--sizes",
      paramLabel = "SIZES",
      split = ",",
      hideParamSyntax = true,
      description = "Sizes of pipe to try, with commas between; without it one to three sizes up.")
  private List<String> sizes = List.of();

  @Option(
      names = "--days",
      paramLabel = "DAYS",
      description = "Days that a pond must last without topping up while the stream runs.")
  private Optional<Double> days = Optional.empty();

  @Mixin private CostArguments cost;

  @Mixin private ConditionArguments conditions;

  @Mixin private ReportArguments report;

  @Override
  public Integer call() {
    Project read = project.read(folder.stream().toList());
    report.check(inputs(read));
    ChosenPumps.require(read);
    conditions.requireFit(read, ChosenPumps::require);
    MendRequest request =
        new MendRequest(
            folder.map(it -> offered(it, read)).orElse(Offered.NOTHING),
            sizes.stream().map(String::strip).toList(),
            cost.years(),
            days(),
            conditions.asked());
    MendAnswer answer = project.ask(request, read);
    report.print(() -> MendJson.of(answer), () -> MendText.of(answer));
    return ExitStatus.DONE;
  }

  private OptionalDouble days() {
    if (days.isPresent() && !(days.get() > 0 && days.get() <= MOST_DAYS)) {
      throw new ParameterException(
          spec.commandLine(), "--days is " + days.get() + "; it must be above 0 and 365 at most");
    }
    return days.stream().mapToDouble(Double::doubleValue).findFirst();
  }

  private InputFiles inputs(Project read) {
    InputFiles inputs = project.inputs(read);
    return folder.map(inputs::andSheetsOf).orElse(inputs);
  }

  private Offered offered(Path from, Project read) {
    double density = read.network().water().densityKgPerM3();
    SheetFolder sheets = ImpossibleSheets.without(SheetFolder.read(from, density), read);
    return new Offered(sheets.sheets(), beside(from) + "/");
  }

  /** The folder as the project names it: from its own folder on. */
  private String beside(Path from) {
    Path home = project.file().toAbsolutePath().normalize().getParent();
    Path there = from.toAbsolutePath().normalize();
    Path named = there.startsWith(home) ? home.relativize(there) : there;
    return named.toString().replace('\\', '/');
  }
}
