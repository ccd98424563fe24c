package rillwright.cli.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.report.balance.BalanceAnswer;
import rillwright.cli.report.json.BalanceJson;
import rillwright.cli.report.picture.SharePicture;
import rillwright.cli.report.text.Ink;
import rillwright.cli.report.text.balance.BalanceText;
import rillwright.solver.study.valvesetting.ValvePlace;
import rillwright.solver.study.valvesetting.ValveSettingFinder;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;
import rillwright.solver.study.valvesetting.ValveSettings;

/** How far to close each valve so that every fall gets its share. */
@Command(
    name = "balance",
    description = {
      "Finds how far to close each valve so that every fall gets its share.",
      "All falls then get the same multiple of their wish, the largest that the pump allows: the",
      "way to the governing fall stays wide open, the others are held back. It tells which valve to set first and how touchy each is."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright balance falls.yaml",
      "  rillwright balance falls.yaml --wish            exactly the wishes, not more",
      "  rillwright balance falls.yaml --valve low --valve high",
      "  rillwright balance falls.yaml --chart share.png",
      "  rillwright balance falls.yaml --set \"lines.high.pipe.size=2 in\"",
      "  rillwright balance falls.yaml --strict          1 if the pump is too small for the wishes"
    })
public final class BalanceCommand implements Callable<Integer> {
  /** A share this little below 1 is the wish. */
  private static final double NOTICEABLE = 0.001;

  @Spec private CommandSpec spec;

  @Mixin private ProjectArguments project;

  @Mixin private ValveArguments valves;

  @Mixin private ChartArguments chart;

  @Option(
      names = "--wish",
      description = "Gives every fall exactly its wish where the pump is strong enough.")
  private boolean wish;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = Format.Reader.class,
      description = "text (default) or json.")
  private Format format = Format.TEXT;

  @Option(
      names = "--strict",
      description = "Ends with exit status 1 if the falls cannot all get their wish.")
  private boolean strict;

  @Mixin
  @SuppressWarnings("UnusedVariable") // read by picocli
  private StandardOptions standard;

  @Override
  public Integer call() {
    Project read = project.read();
    final Optional<PictureFile> picture = chart.picture(project.inputs(read));
    ChosenPumps.require(read);
    requireWish(read);
    List<ValvePlace> places = valves.placesIn(read);
    ValveSettings settings =
        ValveSettingFinder.find(read.network(), places, wish ? Aim.WISH : Aim.LARGEST_SHARE);
    BalanceAnswer answer =
        new BalanceAnswer(read.title(), Shown.of(read), project.changes(), settings);
    String report =
        format == Format.JSON ? BalanceJson.of(answer) : BalanceText.of(answer, Ink.ofTerminal());
    picture.ifPresent(file -> file.write(SharePicture.of(answer)));
    spec.commandLine().getOut().print(report);
    spec.commandLine().getOut().flush();
    return strict && settings.share() < 1 - NOTICEABLE ? ExitStatus.WISH_MISSED : ExitStatus.DONE;
  }

  private static void requireWish(Project project) {
    boolean none =
        project.network().points().stream().noneMatch(point -> point.wantM3PerS().orElse(0) > 0);
    if (none) {
      throw new InvalidInput(
          project.places().whole(),
          "no fall or outlet says what it wants, so nothing can be shared out; write for example"
              + " \"want: 3600 gph\" or \"want: 100 gph/in\" at each fall");
    }
  }
}
