package rillwright.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.report.DutyAnswer;
import rillwright.cli.report.Effort;
import rillwright.cli.report.GravityAnswer;
import rillwright.cli.report.PipesAnswer;
import rillwright.cli.report.json.GravityJson;
import rillwright.cli.report.json.PipesJson;
import rillwright.cli.report.picture.GravityPicture;
import rillwright.cli.report.picture.SizesPicture;
import rillwright.cli.report.text.choice.GravityText;
import rillwright.cli.report.text.choice.PipesText;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.study.duty.DutyFinder;
import rillwright.solver.study.pipechoice.GravityChooser;
import rillwright.solver.study.pipechoice.PipeChoice;
import rillwright.solver.study.pipechoice.PipeChooser;
import rillwright.solver.trial.PumpOffer;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.RunningTerms;

/** Which size of pipe. */
@Command(
    name = "pipes",
    description = {
      "Tells what each pipe size would mean, in flow, watts and money.",
      "Tries sizes for a line, or for several together (one trench) or each freely (--each),",
      "and ranks them by what pipe, pump and electricity cost over the years. With --from FOLDER"
          + " each",
      "size gets its own cheapest pump of the data sheets there: the joint decision, and the only"
          + " one",
      "in which a dearer pipe can pay for itself. Where nothing is pumped the sizes are tried"
          + " alone."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright pipes pond.yaml --line supply --sizes \"1-1/2 in, 2 in, 3 in\"",
      "  rillwright pipes pond.yaml --line supply --line upper --sizes \"2 in, 3 in\" --each",
      "  rillwright pipes pond.yaml --line supply --sizes \"2 in, 3 in\" --from pumps --chart"
          + " pipes.png"
    })
public final class PipesCommand implements Callable<Integer> {
  private static final double NANOSECONDS = 1e9;

  @Mixin private ProjectArguments project;

  @Mixin private SizeArguments sizes;

  @Option(
      names = "--from",
      paramLabel = "FOLDER",
      description = "Data sheets of pumps to choose from, files that end in .csv.")
  private Optional<Path> folder = Optional.empty();

  @Option(
      names = "--pump",
      paramLabel = "NAME",
      description = "The line of the pump that is meant, where there are several.")
  private Optional<String> pumpLine = Optional.empty();

  @Mixin private TogetherArguments together;

  @Mixin private CostArguments cost;

  @Mixin private ConditionArguments conditions;

  @Mixin private DrawnReportArguments report;

  @Override
  public Integer call() {
    Project read = project.read();
    report.check(inputs(read));
    if (folder.isEmpty() && together.upTo() > 1) {
      throw new InvalidInput(
          Place.whole("--upto"),
          "this tries several of each pump of a folder, so it needs --from FOLDER; the project's"
              + " own pump says how many it is with \"count\"");
    }
    Wished.require(read);
    if (pumps(read)) {
      pumped(read);
    } else {
      ofItself(read);
    }
    return ExitStatus.DONE;
  }

  private InputFiles inputs(Project read) {
    InputFiles inputs = project.inputs(read);
    return folder.map(inputs::andSheetsOf).orElse(inputs);
  }

  /** What the command tries itself, as changes would address it. */
  private List<String> tried() {
    List<String> tried = new ArrayList<>();
    for (String line : sizes.lines()) {
      for (String field : List.of("size", "material", "inside")) {
        tried.add("lines." + line + ".pipe." + field);
      }
    }
    return tried;
  }

  /** Whether a pump has to do with it: one that there is, or one that is asked for. */
  private boolean pumps(Project read) {
    return folder.isPresent()
        || pumpLine.isPresent()
        || !PumpPlace.listChosen(read.network()).isEmpty()
        || !PumpPlace.listPlanned(read.network()).isEmpty();
  }

  private void pumped(Project read) {
    PumpPlace place = PumpArguments.placeIn(read, pumpLine, "--pump", sizes.lines());
    OtherPumps.requireChosen(read, place);
    PipesAnswer answer = answer(read, place);
    report.print(
        () -> PipesJson.of(answer),
        () -> PipesText.of(answer),
        () -> Optional.of(SizesPicture.of(answer)));
  }

  private void ofItself(Project read) {
    StudyConditions judged = StudyConditions.of(conditions, read, Optional.empty());
    SizeArguments.Tried tried = sizes.read(read, judged::states);
    GravityAnswer answer =
        new GravityAnswer(
            read.title(),
            Shown.of(read),
            project.changes(),
            cost.terms(read.running()).years(),
            Offers.currencyOf(read.running(), read.prices()),
            GravityChooser.choose(tried.options()),
            tried.unpriced(),
            tried.uncounted(),
            judged.told(tried()));
    report.print(
        () -> GravityJson.of(answer),
        () -> GravityText.of(answer),
        () -> Optional.of(GravityPicture.of(answer)));
  }

  private PipesAnswer answer(Project read, PumpPlace place) {
    RunningTerms terms = cost.terms(read.running());
    StudyConditions judged = StudyConditions.of(conditions, read, Optional.of(place));
    SizeArguments.Tried tried = sizes.read(read, judged::states);
    List<Fault> faults = new ArrayList<>();
    List<PumpSetup> setups = new ArrayList<>();
    Offers offers;
    if (folder.isPresent()) {
      double density = read.network().water().densityKgPerM3();
      SheetFolder all = SheetFolder.read(folder.get(), density);
      SheetFolder sheets = ImpossibleSheets.without(all, read);
      offers = Offers.of(sheets, read.running(), read.prices());
      faults.addAll(sheets.faults());
      int upTo = together.upTo();
      offers.pumps().forEach(offer -> setups.addAll(PumpSetup.listOf(offer, upTo)));
    } else {
      Pump pump = ownPump(read, place);
      offers = Offers.ofProject(read, pump.model());
      PumpOffer own = offers.pumps().get(0);
      setups.add(
          new PumpSetup(own, pump.set().count(), pump.set().arrangement(), pump.set().speed()));
    }
    long start = System.nanoTime();
    PipeChoice choice = PipeChooser.choose(tried.options(), place, setups, terms);
    Effort effort = new Effort(choice.trials(), (System.nanoTime() - start) / NANOSECONDS);
    return new PipesAnswer(
        new DutyAnswer(
            read.title(),
            Shown.of(read),
            read.network(),
            place,
            DutyFinder.find(read.network(), place)),
        project.changes(),
        terms,
        read.running(),
        offers.currency(),
        choice,
        folder.isPresent(),
        tried.unpriced(),
        tried.uncounted(),
        faults,
        offers.otherCurrencies(),
        effort,
        judged.told(tried()));
  }

  private static Pump ownPump(Project read, PumpPlace place) {
    Part part = read.network().line(place.line()).parts().get(place.partIndex());
    if (part instanceof Pump pump && pump.set().speed() > 0) {
      return pump;
    }
    throw new InvalidInput(
        read.places().ofPart(place.line(), place.partIndex()),
        "line "
            + PlainText.quoted(place.line().value())
            + ": its pump is still to be chosen or stands still; name one, or say --from FOLDER to"
            + " choose pump and pipe together");
  }
}
