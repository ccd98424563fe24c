package rillwright.cli.study.mend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.solver.finding.Findings;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** Single changes that are tried, each against the file with that change written into it. */
class TriedChangesTest {
  private static final MendRequest USUAL = new MendRequest(Offered.NOTHING, List.of(), 10);

  private static final String NARROW =
      """
      rillwright: 1
      title: Narrow fittings
      show: us
      points:
        pond: {kind: basin, level: 0 ft}
        fall: {kind: fall, crest: 4 ft, width: 20 in, lip: stone, target: 4400 gph}
      lines:
        supply:
          from: pond
          to: fall
          pipe: {material: PVC schedule 40, size: 2 in}
          parts:
            - pump: pump
            - check valve: {type: swing}
            - valve: {type: ball, size: 1 in, open: 100 %}
            - run: 30 ft
            - fitting: {type: elbow 90, count: 6}
      pumps:
        pump:
          points:
            - {flow: 0 gph, head: 22 ft}
            - {flow: 1900 gph, head: 18 ft}
            - {flow: 3800 gph, head: 11 ft}
            - {flow: 4900 gph, head: 0 ft}
      """;

  @TempDir private Path folder;

  private Project narrow(String... changes) throws IOException {
    Path file = folder.resolve("narrow.yaml");
    Files.writeString(file, NARROW);
    return ProjectReader.read(file, List.of(changes));
  }

  private static Project example(String name, String... changes) {
    return ProjectReader.read(Path.of("../examples", name), Arrays.asList(changes));
  }

  private static double flow(Project project, String fall) {
    return state(project).point(new PointName(fall)).outflowM3PerS();
  }

  private static SteadyState state(Project project) {
    return SteadyStateFinder.find(project.network());
  }

  @ParameterizedTest
  @CsvSource({
    "lines.supply.valve.size=2 in, LARGER_VALVE",
    "lines.supply.fitting.type=sweep 90, FREER_FITTING",
  })
  void aFreerPartGivesWhatTheFileWithItGives(String change, Action action) throws IOException {
    Remedy remedy =
        USUAL.answer(narrow()).remedies().stream()
            .filter(it -> it.candidate().set().equals(List.of(change)))
            .findFirst()
            .orElseThrow();
    assertEquals(action, remedy.candidate().steps().get(0).action());
    double today = flow(narrow(), "fall");
    double then = flow(narrow(change), "fall");
    assertTrue(then > today, today + " before, " + then + " then");
    assertEquals(then, remedy.fallsM3PerS().get(new PointName("fall")), 1e-9 * then);
  }

  /** The highest crest by half inches that leaves the target: a step more misses it. */
  @Test
  void aCrestIsRaisedWhereAFallGetsTooMuch() {
    String target = "points.fall.target=1000 gph";
    double targetM3PerS = 1000 * 3.785411784e-3 / 3600;
    Remedy raised =
        USUAL.answer(example("small-pond/pond.yaml", target)).remedies().stream()
            .filter(it -> it.candidate().steps().size() == 1)
            .filter(it -> it.candidate().steps().get(0).action() == Action.OTHER_CREST)
            .findFirst()
            .orElseThrow();
    assertTrue(raised.mends());
    String change = raised.candidate().set().get(0);
    double crestIn = Double.parseDouble(change.replaceAll(".*=| in", ""));
    assertTrue(crestIn > 30, change);
    double written = flow(example("small-pond/pond.yaml", target, change), "fall");
    assertTrue(written >= targetM3PerS);
    String higher = "points.fall.crest=" + (crestIn + 0.5) + " in";
    assertTrue(flow(example("small-pond/pond.yaml", target, higher), "fall") < targetM3PerS);
  }

  /** The best of the sheet by hand: 24 % near 1,060 gph; 1,580 gph is one and a half times that. */
  @Test
  void aPumpFarFromItsBestIsInNeedWhereAllElseIsMet() {
    MendRequest asked =
        new MendRequest(Offered.NOTHING, List.of(), 10, OptionalDouble.empty(), Optional.empty());
    MendAnswer answer =
        asked.answer(example("small-pond/pond.yaml", "points.fall.target=1400 gph"));
    assertEquals(
        List.of("far-from-best-efficiency"), answer.needs().stream().map(Need::code).toList());
    assertEquals("supply", answer.needs().get(0).at());
    for (Remedy remedy : answer.mendingAll()) {
      assertTrue(remedy.leastShare() >= 1, remedy.candidate().toString());
    }
    assertTrue(
        asked.answer(example("small-pond/pond.yaml")).needs().stream().allMatch(Need::isOfTarget));
  }

  /** A little less water in the pond halves these falls; with what mends all, it does not. */
  @Test
  void aSensitiveFallIsInNeedAndMended() {
    Project high =
        ProjectReader.read(
            Path.of("src/test/resources/rillwright/cli/findings.yaml"),
            List.of(
                "points.upper.crest=13.8 ft",
                "points.lower.crest=13.8 ft",
                "lines.to upper.high point=0 ft"));
    MendAnswer answer = USUAL.answer(high);
    assertTrue(answer.needs().stream().anyMatch(need -> need.code().equals("touchy")));
    assertFalse(answer.mendingAll().isEmpty());
    for (Remedy remedy : answer.mendingAll()) {
      assertTrue(
          Findings.of(state(high.with(remedy.candidate().set()))).stream()
              .noneMatch(finding -> finding.code().equals("touchy")),
          remedy.candidate().set().toString());
    }
  }

  /** What keeps a change from being enough is named with it. */
  @Test
  void whatAChangeLeavesIsNamed() {
    Remedy larger =
        USUAL.answer(example("twin-falls/ball-valves.yaml")).remedies().stream()
            .filter(it -> it.candidate().set().equals(List.of("lines.supply.pump.model=P-600")))
            .findFirst()
            .orElseThrow();
    assertEquals(
        List.of("low fall over-target"),
        larger.leaves().stream().map(need -> need.at() + " " + need.code()).toList());
  }

  /** Their sheets give no speeds, and say that they stand under water. */
  @ParameterizedTest
  @ValueSource(strings = {"long-stream/dry.yaml", "twin-falls/ball-valves.yaml"})
  void aPumpIsRunOnlyAsItsSheetAllows(String job) {
    for (Remedy remedy : USUAL.answer(example(job)).remedies()) {
      for (Step step : remedy.candidate().steps()) {
        assertNotEquals(Action.SPEED, step.action(), step.toString());
        assertNotEquals(Action.MORE_IN_SERIES, step.action(), step.toString());
      }
    }
  }

  private static final String NO_VALVES =
      """
      rillwright: 1
      title: No valves
      show: metric
      points:
        pond: {kind: basin, level: -60 mm, overflow: 20 mm, grade: 100 mm, area: 6 m2}
        chamber: {kind: chamber, floor: -0.9 m, intake: -0.5 m, area: 0.2 m2}
        split: {kind: tee}
        near: {kind: fall, crest: 0.8 m, width: 0.4 m, lip: stone, target: 3 m3/h}
        far: {kind: fall, crest: 1.2 m, width: 0.4 m, lip: stone, target: 3 m3/h}
      lines:
        intake:
          from: pond
          to: chamber
          parts: [{skimmer: {width: 0.2 m, height: 0.18 m, sill: -100 mm, clogged: 30 %}}]
        supply:
          from: chamber
          to: split
          pipe: {material: PVC-U PN 10, size: 50 mm}
          parts: [{pump: one}, {run: 8 m}, {valve: {type: gate, open: 40 %}}]
        near: {from: split, to: near, pipe: {material: PVC-U PN 10, size: 50 mm}, parts: [{run: 3 m}]}
        far: {from: split, to: far, pipe: {material: PVC-U PN 10, size: 50 mm}, parts: [{run: 9 m}]}
      pumps:
        one: {points: [{flow: 0 m3/h, head: 5 m}, {flow: 6 m3/h, head: 3.5 m}, {flow: 12 m3/h, head: 0 m}]}
        two: {points: [{flow: 0 m3/h, head: 7 m}, {flow: 8 m3/h, head: 5 m}, {flow: 15 m3/h, head: 0 m}]}
      """;

  private static final String RESERVOIR =
      """
      rillwright: 1
      title: Reservoir
      show: metric
      evaporation: {rate: 6 mm/day}
      points:
        reservoir: {kind: basin, level: 0 mm, overflow: 20 mm, grade: 0.3 m, least level: -60 mm,
          shape: [{level: -0.6 m, area: 1.5 m2}, {level: 0.3 m, area: 1.5 m2}]}
        fall: {kind: fall, crest: 1 m, width: 0.4 m, lip: stone, target: 4 m3/h}
      lines:
        supply:
          from: reservoir
          to: fall
          pipe: {material: PVC-U PN 10, size: 63 mm}
          parts: [{pump: one}, {check valve: {type: swing}}, {run: 6 m}]
      pumps:
        one: {points: [{flow: 0 m3/h, head: 4 m}, {flow: 5 m3/h, head: 2 m}, {flow: 9 m3/h, head: 0 m}]}
      streams:
        main: {from: fall, to: reservoir, reaches: [{step: {height: 0.6 m, width: 0.4 m}},
          {length: 6 m, drop: 0.4 m, width: 0.4 m, bank: 0, bed: {stone: 50 mm}}]}
      """;

  private Project written(String text, String... changes) throws IOException {
    Path file = folder.resolve("job.yaml");
    Files.writeString(file, text);
    return ProjectReader.read(file, List.of(changes));
  }

  /** Each kind of change is tried for some job; what it promises is what the file with it gives. */
  @Test
  void everyKindOfChangeIsTriedAndGivesWhatItPromises() throws IOException {
    List<Project> jobs =
        List.of(
            example("twin-falls/ball-valves.yaml"),
            example("twin-falls/falls.yaml"),
            example("small-pond/pond.yaml"),
            example("long-stream/dry.yaml", "lines.supply.pump.speed=99 %"),
            narrow(),
            written(NO_VALVES),
            written(NO_VALVES, "points.pond.level=-95 mm"),
            written(RESERVOIR),
            example("long-stream/mended.yaml", "points.pond.level=-100 mm"));
    Set<Action> seen = EnumSet.noneOf(Action.class);
    for (Project job : jobs) {
      for (Remedy remedy : USUAL.answer(job).remedies()) {
        remedy.candidate().steps().forEach(step -> seen.add(step.action()));
        SteadyState solved = state(job.with(remedy.candidate().set()));
        remedy
            .fallsM3PerS()
            .forEach(
                (fall, flow) ->
                    assertEquals(
                        solved.point(fall).outflowM3PerS(),
                        flow,
                        1e-9 * Math.max(1e-3, flow),
                        () -> remedy.candidate().set().toString()));
      }
    }
    assertEquals(EnumSet.allOf(Action.class), seen);
  }

  /** The fall has its target already; the pump runs far beyond its best flow. */
  @Test
  void aValveIsTurnedForAPumpWhereTheFallHasEnough() throws IOException {
    String text =
        NARROW
            .replace("size: 1 in", "size: 2 in")
            .replace("4400 gph", "3100 gph")
            .replace("run: 30 ft", "run: 60 ft")
            .replace("22 ft}", "22 ft, power: 240 W}")
            .replace("18 ft}", "18 ft, power: 340 W}")
            .replace("11 ft}", "11 ft, power: 405 W}")
            .replace("head: 0 ft}", "head: 0 ft, power: 410 W}");
    Path file = Files.writeString(folder.resolve("wide.yaml"), text);
    MendAnswer answer = USUAL.answer(ProjectReader.read(file, List.of()));

    assertEquals(List.of(true), answer.needs().stream().map(Need::isOfEfficiency).toList());
    Remedy first = answer.mendingAll().get(0);
    assertEquals(
        List.of(Action.TURN_VALVE), first.candidate().steps().stream().map(Step::action).toList());
    Project turned = ProjectReader.read(file, first.candidate().set());
    assertEquals(List.of(), USUAL.answer(turned).needs());
  }
}
