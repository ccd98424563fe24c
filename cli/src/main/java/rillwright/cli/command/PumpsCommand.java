package rillwright.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rillwright.cli.file.Project;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.report.DutyAnswer;
import rillwright.cli.report.Effort;
import rillwright.cli.report.PumpsAnswer;
import rillwright.cli.report.json.PumpsJson;
import rillwright.cli.report.picture.CandidatesPicture;
import rillwright.cli.report.text.choice.PumpsText;
import rillwright.solver.network.Network;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.study.duty.DutyFinder;
import rillwright.solver.study.pumpchoice.PumpChoice;
import rillwright.solver.study.pumpchoice.PumpChooser;
import rillwright.solver.trial.RunningTerms;
import rillwright.solver.trial.SiteState;

/** Which pump of a folder of data sheets does it. */
@Command(
    name = "pumps",
    description = {
      "Tries every data sheet of a folder in place of the project's pump and ranks them.",
      "Those that give every fall its wish stand first, by what they cost over the years; of the",
      "others it says what is missing.",
      "Where a sheet says \"# variable speed: 40..100 %%\", its least sufficient speed is tried"
          + " too.",
      "The pump may still be to be chosen (\"- pump: to be chosen\")."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright pumps pond.yaml --from pumps",
      "  rillwright pumps pond.yaml --from pumps --upto 2 --years 5   also two together",
      "  rillwright pumps pond.yaml --from pumps --chart pumps.png",
      "  rillwright pumps pond.yaml --from pumps --conditions   what does it in autumn too",
      "  rillwright pumps pond.yaml --from pumps --set \"lines.intake.skimmer.clogged=40 %%\""
    })
public final class PumpsCommand implements Callable<Integer> {
  private static final double NANOSECONDS = 1e9;

  @Mixin private ProjectArguments project;

  @Option(
      names = "--from",
      paramLabel = "FOLDER",
      required = true,
      description = "The folder with the data sheets, files that end in .csv.")
  private Path folder;

  @Mixin private PumpArguments pump;

  @Mixin private TogetherArguments together;

  @Mixin private CostArguments cost;

  @Mixin private ConditionArguments conditions;

  @Mixin private DrawnReportArguments report;

  @Override
  public Integer call() {
    Project read = project.read();
    report.check(project.inputs(read).andSheetsOf(folder));
    PumpPlace place = pump.placeIn(read);
    Wished.require(read);
    OtherPumps.requireChosen(read, place);
    RunningTerms terms = cost.terms(read.running());
    SheetFolder sheets = SheetFolder.read(folder, read.network().water().densityKgPerM3());
    SheetFolder possible = ImpossibleSheets.without(sheets, read);
    Offers offers = Offers.of(possible, read.running(), read.prices());
    PumpsAnswer answer = answer(read, place, terms, possible, offers);
    report.print(
        () -> PumpsJson.of(answer),
        () -> PumpsText.of(answer),
        () -> Optional.of(CandidatesPicture.of(answer)));
    return ExitStatus.DONE;
  }

  private PumpsAnswer answer(
      Project read, PumpPlace place, RunningTerms terms, SheetFolder sheets, Offers offers) {
    Network network = read.network();
    StudyConditions judged = StudyConditions.of(conditions, read, Optional.of(place));
    List<SiteState> states = judged.states(read);
    long start = System.nanoTime();
    PumpChoice choice =
        PumpChooser.choose(network, states, place, offers.pumps(), together.upTo(), terms);
    Effort effort =
        new Effort(
            (1 + states.size()) * choice.ranked().size(),
            (System.nanoTime() - start) / NANOSECONDS);
    return new PumpsAnswer(
        new DutyAnswer(
            read.title(), Shown.of(read), network, place, DutyFinder.find(network, place)),
        project.changes(),
        terms,
        read.running(),
        offers.currency(),
        choice,
        sheets.faults(),
        offers.otherCurrencies(),
        effort,
        judged.told(List.of("lines." + place.line().value() + ".pump")),
        states);
  }
}
