package rillwright.cli.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.file.size.SizeOption;
import rillwright.cli.study.asbuilt.AsbuiltRequest;
import rillwright.cli.study.balance.BalanceRequest;
import rillwright.cli.study.balance.ValveSweeps;
import rillwright.cli.study.check.CheckRequest;
import rillwright.cli.study.choice.CandidateCurves;
import rillwright.cli.study.choice.GravityRequest;
import rillwright.cli.study.choice.PipesRequest;
import rillwright.cli.study.choice.PumpsRequest;
import rillwright.cli.study.choice.SizeCurves;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.condition.InConditions;
import rillwright.cli.study.curve.CurvesRequest;
import rillwright.cli.study.duty.DutyRequest;
import rillwright.cli.study.mend.MendRequest;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.odds.OddsRequest;
import rillwright.cli.study.section.SectionRequest;
import rillwright.cli.study.section.Station;
import rillwright.cli.study.solve.SolveRequest;
import rillwright.cli.study.solve.Solved;
import rillwright.cli.study.stream.StreamRequest;
import rillwright.cli.study.stream.StreamRequest.Follow;
import rillwright.cli.study.weak.CausesRequest;
import rillwright.cli.study.weak.WeakRequest;
import rillwright.solver.network.LineName;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.study.pipechoice.PipeOption.Size;
import rillwright.solver.study.uncertainty.SamplingPlan;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;

/**
 * Every study is asked without the command line, and of a project that was changed in memory it
 * tells what it tells of the edited file. The projects are the invented ones of the examples.
 */
class StudiesAskedTest {
  private static final Path EXAMPLES = Path.of("..", "examples");

  @TempDir private Path folder;

  /**
   * Asks a study of an example as it is, edited and changed in memory.
   *
   * @param tells what of the answer is compared
   */
  private <A extends Answer> void assertEditedAlike(
      String example, Edit edit, Request<A> request, Function<A, ?> tells) throws IOException {
    Path file = copied(example);
    Project before = ProjectReader.read(file, List.of());
    String text = Files.readString(file);
    Files.writeString(file, text.replace(edit.from(), edit.to()));
    assertNotEquals(text, Files.readString(file), "the text stands there");
    A edited = request.answer(ProjectReader.read(file, List.of()));
    Files.delete(file);
    A changed = request.answer(before.with(List.of(edit.change())));
    assertEquals(tells.apply(edited), tells.apply(changed));
    assertNotEquals(tells.apply(request.answer(before)), tells.apply(changed), "it matters");
    assertEquals(List.of(edit.change()), changed.changes());
    assertEquals(edited.title(), changed.title());
  }

  private record Edit(String from, String to, String change) {}

  /** An example in a folder of its own, with its data sheets. */
  private Path copied(String example) throws IOException {
    Path original = EXAMPLES.resolve(example);
    Path pumps = original.resolveSibling("pumps");
    if (Files.isDirectory(pumps)) {
      Files.createDirectories(folder.resolve("pumps"));
      for (Path sheet : SheetFolder.list(pumps)) {
        Files.copy(sheet, folder.resolve("pumps").resolve(sheet.getFileName()));
      }
    }
    return Files.copy(original, folder.resolve(original.getFileName()));
  }

  private static final Edit LOWER_FALL =
      new Edit("crest: 60 in", "crest: 48 in", "points.high fall.crest=48 in");
  private static final String TWIN = "twin-falls/falls.yaml";
  private static final PumpPlace SUPPLY = new PumpPlace(new LineName("supply"), 0);

  private static List<Double> flows(Solved solved) {
    return solved.state().points().stream().map(point -> point.outflowM3PerS()).toList();
  }

  @Test
  void check() throws IOException {
    assertEditedAlike(
        TWIN, LOWER_FALL, new CheckRequest(), checked -> checked.project().network().points());
  }

  @Test
  void solve() throws IOException {
    assertEditedAlike(TWIN, LOWER_FALL, new SolveRequest(), StudiesAskedTest::flows);
  }

  @Test
  void section() throws IOException {
    assertEditedAlike(
        TWIN,
        LOWER_FALL,
        new SectionRequest(),
        section ->
            section.ways().stream()
                .flatMap(way -> way.stations().stream())
                .map(Station::after)
                .toList());
  }

  @Test
  void solveInConditions() throws IOException {
    assertEditedAlike(
        "old-falls/falls.yaml",
        new Edit("crest: 60 in ±", "crest: 48 in ±", "points.high fall.crest=48 in ± 1/2 in"),
        new InConditions<>(new SolveRequest(), List.of("autumn", "cold water")),
        StudiesAskedTest::conditions);
  }

  private static List<?> conditions(Cases<Solved> cases) {
    assertEquals(
        List.of("autumn", "cold water"), cases.cases().stream().map(Case::condition).toList());
    return cases.cases().stream()
        .map(
            one ->
                List.of(
                    flows(one.answer().orElseThrow()),
                    one.answer().orElseThrow().state().points().stream()
                        .map(point -> point.isUnderTarget())
                        .toList()))
        .toList();
  }

  @Test
  void duty() throws IOException {
    assertEditedAlike(TWIN, LOWER_FALL, new DutyRequest(SUPPLY), answer -> answer.duty());
  }

  @Test
  void curves() throws IOException {
    assertEditedAlike(
        TWIN, LOWER_FALL, new CurvesRequest(SUPPLY), curves -> curves.system().points());
  }

  @Test
  void balance() throws IOException {
    assertEditedAlike(
        TWIN,
        LOWER_FALL,
        new BalanceRequest(List.of(), Aim.LARGEST_SHARE),
        answer ->
            List.of(
                answer.settings().targetFraction(),
                ValveSweeps.of(answer).sweeps().stream().map(sweep -> sweep.steps()).toList()));
  }

  @Test
  void mend() throws IOException {
    assertEditedAlike(
        TWIN,
        LOWER_FALL,
        new MendRequest(Offered.NOTHING, List.of(), 10),
        answer ->
            List.of(
                answer.bounds(),
                answer.remedies().stream().map(remedy -> remedy.fallsM3PerS()).toList()));
  }

  private SheetFolder supplier() {
    return SheetFolder.read(EXAMPLES.resolve("twin-falls/pumps"), 998.2);
  }

  @Test
  void pumps() throws IOException {
    assertEditedAlike(
        TWIN,
        LOWER_FALL,
        PumpsRequest.usual(SUPPLY, supplier()),
        answer ->
            List.of(
                answer.choice().ranked().stream().map(rated -> rated.trial().operating()).toList(),
                CandidateCurves.of(answer).asItStands()));
  }

  private static SizeOption size(String line, String name, double boreM) {
    return new SizeOption(
        Map.of(new LineName(line), new Size(name, boreM)),
        List.of("lines." + line + ".pipe.size=" + name));
  }

  @Test
  void pipes() throws IOException {
    List<SizeOption> sizes =
        List.of(size("supply", "2 in", 0.0525), size("supply", "3 in", 0.0779));
    assertEditedAlike(
        TWIN,
        LOWER_FALL,
        new PipesRequest(SUPPLY, sizes, Optional.of(supplier()), 1, 5, Optional.of(List.of())),
        answer ->
            List.of(
                answer.choice().ranked().stream()
                    .map(rated -> rated.pump().trial().operating())
                    .toList(),
                SizeCurves.of(answer).curves().stream().map(curve -> curve.system()).toList(),
                answer.conditions().orElseThrow()));
  }

  @Test
  void pipesWithoutPump() throws IOException {
    assertEditedAlike(
        "header-pond/troughs.yaml",
        new Edit("level: 6 ft", "level: 7 ft", "points.header pond.level=7 ft"),
        new GravityRequest(
            List.of(size("main", "2 in", 0.0525), size("main", "3 in", 0.0779)),
            10,
            Optional.empty()),
        answer ->
            answer.choice().ranked().stream()
                .map(pipe -> pipe.state().points().get(0).outflowM3PerS())
                .toList());
  }

  @Test
  void odds() throws IOException {
    assertEditedAlike(
        "old-falls/falls.yaml",
        new Edit(
            "clogged: 0 % .. 60 %",
            "clogged: 0 % .. 80 %", "lines.intake.skimmer.clogged=0 % .. 80 %"),
        new OddsRequest(new SamplingPlan(200, 1, 2)),
        answer -> answer.odds().falls());
  }

  @Test
  void asbuilt() throws IOException {
    assertEditedAlike(
        "old-falls/falls.yaml",
        new Edit("run: 14 ft ± 2 ft", "run: 20 ft ± 2 ft", "lines.supply.run=20 ft ± 2 ft"),
        AsbuiltRequest.usual(),
        answer -> answer.falls());
  }

  @Test
  void weak() throws IOException {
    assertEditedAlike(
        "weak-fall/fall.yaml",
        new Edit("run: 84 ft", "run: 60 ft", "lines.supply.run=60 ft"),
        WeakRequest.usual(),
        answer -> answer.diagnosis().causes().stream().map(cause -> cause.probability()).toList());
  }

  @Test
  void causes() throws IOException {
    assertEditedAlike(
        "weak-fall/fall.yaml",
        new Edit("crest: 6 ft", "crest: 5 ft", "points.fall.crest=5 ft"),
        new CausesRequest(Optional.empty()),
        answer ->
            answer.built().state().points().stream().map(point -> point.outflowM3PerS()).toList());
  }

  @Test
  void streams() throws IOException {
    assertEditedAlike(
        "long-stream/stream.yaml",
        new Edit("crest: 2.40 m", "crest: 2.20 m", "points.spill box.crest=2.20 m"),
        new StreamRequest(Follow.START_AND_STOP),
        answer ->
            List.of(
                answer.budget().running().transit().totalM3(),
                answer.course().orElseThrow().moments()));
  }
}
