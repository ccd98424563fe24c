package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** Networks on which a study once looked for more than there is to find. */
class BoundedWorkTest {
  private static final long MEGABYTES = 1_000_000;
  private static final int MOST_STEPS_A_BALANCE = 20;
  private static final int RUNGS = 24;
  private static final String PIPE =
      ", pipe: {inside: 60 mm, roughness: 0.01 mm}, parts: [{run: 3 m}";

  private static final String HOSE =
      """
      points:
        pond: {kind: basin, level: 0 m}
        tank: {kind: basin, level: 2 m}
        split: {kind: tee, elevation: 0 m}
        fall: {kind: fall, crest: 1 m, width: 0.5 m, target: 3 L/s}
      lines:
        supply: {from: pond, to: split, pipe: {inside: 75 mm, roughness: 0.01 mm},
          parts: [{pump: p}, {check valve: {k: 2}}, {run: 5 m}]}
        up: {from: split, to: fall, pipe: {inside: 50 mm, roughness: 0.01 mm},
          parts: [{run: 5 m}]}
        hose: {from: tank, to: split, pipe: {inside: 4 mm, roughness: 0.01 mm},
          parts: [{run: 20 m}, {gauge: {name: G1, elevation: 0 m}}, {run: 20 m}]}
      pumps:
        p: {points: [{flow: 0 L/s, head: 6 m}, {flow: 10 L/s, head: 0 m}]}
      readings:
        - {at: fall, flow: 3 L/s}
      """;

  @TempDir private Path folder;

  /** A gauge in a hose of 4 mm reads thousands of deviations apart over the sizes of a leak. */
  @Test
  void readingsWithoutMeasureAreSampledToABound() {
    String project = Scratch.file(folder, HOSE);
    MeasuredRun run = MeasuredRun.of("weak", project, "--format", "json");
    assertEquals("", run.err());
    assertTrue(run.allocatedBytes() < 3000 * MEGABYTES, run.allocatedBytes() + " bytes");
  }

  /**
   * With the pump off a leak that takes a fixed flow would draw it through 20 m of such a hose: no
   * gauge reads less than a vacuum.
   */
  @Test
  void aLeakWithThePumpOffDrawsNoMoreThanAVacuum() {
    String off =
        """
          - {gauge: G1, pressure: 12 kPa, when: pump off}
        """;
    MeasuredRun run = MeasuredRun.of("weak", Scratch.file(folder, HOSE + off), "--format", "json");
    assertEquals("", run.err());
    assertTrue(run.allocatedBytes() < 3000 * MEGABYTES, run.allocatedBytes() + " bytes");
    for (JsonNode cause : run.json().get("causes")) {
      double predicted = cause.get("predicted").get(1).asDouble();
      assertTrue(predicted > -101_326, cause.get("cause").asString() + " " + predicted + " Pa");
    }
  }

  /** No pump brings every fall any share of its target: that is found once for all pumps tried. */
  @Test
  void whatNoPumpCanGiveIsNotSearchedForEachPump() {
    String project = Scratch.file(folder, ProjectTree.yaml(RandomProject.large(3)));
    String supplier = "../examples/long-stream/supplier";
    MeasuredRun nine =
        MeasuredRun.of(
            "pipes",
            project,
            "--line",
            "line 1",
            "--sizes",
            "63 mm",
            "--conditions",
            "--from",
            supplier,
            "--format",
            "json");
    assertEquals(0, nine.status(), nine.err());
    assertTrue(nine.out().contains("falls-short"), nine.out());
    assertTrue(nine.allocatedBytes() < 2000 * MEGABYTES, nine.allocatedBytes() + " bytes");
  }

  /** Flows that a pump draws out of a dry fall: where no balance is found, none is drawn. */
  @Test
  void aFlowWithoutABalanceIsOneThatCannotBeDrawn() {
    String project = Scratch.file(folder, ProjectTree.yaml(RandomProject.of(847_666_066)));
    String supplier = "../examples/long-stream/supplier";
    MeasuredRun run =
        MeasuredRun.of(
            "pipes", project, "--line", "line 8", "--sizes", "63 mm", "--from", supplier);
    assertEquals(0, run.status(), run.err());
  }

  /** What joins lines to circuits was once looked for among all lines at each of them. */
  @Test
  void causesOfALargeJobAreListedAtOnce() {
    StringBuilder points = new StringBuilder("points:\n  t0: {kind: basin, level: 0 m}\n");
    StringBuilder lines = new StringBuilder("lines:\n");
    for (int i = 1; i <= 1000; i++) {
      points.append("  t" + i + ": {kind: tee, elevation: 0 m}\n");
      lines.append("  l" + i + ": {from: t" + (i - 1) + ", to: t" + i + PIPE + "]}\n");
    }
    points.append("  fall: {kind: fall, crest: -1 m, width: 0.5 m}\n");
    lines.append("  out: {from: t1000, to: fall" + PIPE + "]}\n");
    String project = Scratch.file(folder, points + lines.toString());
    MeasuredRun run = MeasuredRun.of("weak", project, "--causes", "--format", "json");
    assertEquals(0, run.status(), run.err());
    assertTrue(run.allocatedBytes() < 1500 * MEGABYTES, run.allocatedBytes() + " bytes");
  }

  /** A chamber of a few square centimetres rises and falls within milliseconds. */
  @Test
  void levelsThatRaceAreGivenUpAndNamed() {
    String pond = "../examples/small-pond/pond.yaml";
    String small = "points.chamber.area=0.037735 ft2";
    MeasuredRun run = MeasuredRun.of("stream", pond, "--times", "--set", small);
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("the level of \"chamber\" changes too fast"), run.out());
    JsonNode course =
        MeasuredRun.of("stream", pond, "--times", "--set", small, "--format", "json")
            .json()
            .get("course");
    assertEquals("chamber", course.get("givenUp").get("point").asString());
    double timeS = course.get("givenUp").get("timeS").asDouble();
    JsonNode last = course.get("moments").get(course.get("moments").size() - 1);
    assertEquals(timeS, last.get("timeS").asDouble());
    assertTrue(timeS > 0, timeS + " s");
  }

  /**
   * What might have been meant is searched among all points for each misspelt one, so no further.
   */
  @Test
  void ofManyWrongConditionsTheFirstAreChecked() {
    StringBuilder text = new StringBuilder("points:\n");
    for (int i = 0; i < 1000; i++) {
      text.append("  point number ").append(i).append(": {kind: basin, level: 0 m}\n");
    }
    text.append(
        "  end: {kind: outlet, elevation: -1 m}\nlines:\n  a: {from: point number 1, to: end,");
    text.append(" pipe: {inside: 5 cm, roughness: 0.01 mm}, parts: [{run: 2 m}]}\nconditions:\n");
    for (int i = 0; i < 1000; i++) {
      text.append("  c" + i + ": {points: {pint nmber " + i + ": {level: 1 m}}}\n");
    }
    MeasuredRun run = MeasuredRun.of("check", Scratch.file(folder, text.toString()));
    assertEquals(2, run.status());
    assertEquals(91, run.err().lines().count(), run.err());
    assertTrue(run.err().contains("the conditions from \"c90\" on are not checked yet"), run.err());
    assertTrue(run.err().contains("did you mean \"point number 7\""), run.err());
  }

  /** A pump and falls downstream of lines that all climb over a high point. */
  private static String branches(int count) {
    StringBuilder points =
        new StringBuilder(
            """
            points:
              pond: {kind: basin, level: 0 m}
              tee 0: {kind: tee, elevation: 0 m}
            """);
    StringBuilder lines =
        new StringBuilder(
            """
            lines:
              supply: {from: pond, to: tee 0, pipe: {inside: 100 mm, roughness: 0.01 mm},
                parts: [{pump: p}, {run: 5 m}]}
            """);
    for (int i = 1; i <= count; i++) {
      points.append("  tee " + i + ": {kind: tee, elevation: 0 m}\n");
      points.append("  fall " + i + ": {kind: fall, crest: 1 m, width: 0.5 m}\n");
      lines.append("  way " + i + ": {from: tee " + (i - 1) + ", to: tee " + i + PIPE + "]}\n");
      lines.append("  up " + i + ": {from: tee " + i + ", to: fall " + i + PIPE);
      lines.append(", {high point: " + (0.5 + 0.01 * i) + " m}]}\n");
    }
    return points
        + lines.toString()
        + "pumps:\n  p: {points: [{flow: 0 L/s, head: 6 m}, {flow: 30 L/s, head: 2 m}]}\n";
  }

  /** One balance for each line that is let run, and two more. */
  @ParameterizedTest
  @ValueSource(ints = {4, 8, 16})
  void stepsGrowWithTheLinesThatClimb(int count) {
    String project = Scratch.file(folder, branches(count));
    MeasuredRun run = MeasuredRun.of("solve", project, "--format", "json");
    assertEquals(0, run.status(), run.err());
    int steps = run.json().get("iterations").asInt();
    assertTrue(steps <= MOST_STEPS_A_BALANCE * (count + 2), steps + " steps");
  }

  /** Water that does not start leaves a ladder of rings dry: its ways are too many to be tried. */
  @Test
  void headsAreCarriedOnThroughRingsWithoutTryingEveryWay() {
    StringBuilder points = new StringBuilder("points:\n  pond: {kind: basin, level: 0 m}\n");
    StringBuilder lines = new StringBuilder("lines:\n");
    lines.append("  supply: {from: pond, to: a 0" + PIPE + ", {high point: 2 m}]}\n");
    for (int i = 0; i <= RUNGS; i++) {
      points.append("  a " + i + ": {kind: tee, elevation: 0 m}\n");
      points.append("  b " + i + ": {kind: tee, elevation: 0 m}\n");
      lines.append("  rung " + i + ": {from: a " + i + ", to: b " + i + PIPE + "]}\n");
      if (i > 0) {
        lines.append("  left " + i + ": {from: a " + (i - 1) + ", to: a " + i + PIPE + "]}\n");
        lines.append("  right " + i + ": {from: b " + (i - 1) + ", to: b " + i + PIPE + "]}\n");
      }
    }
    points.append("  fall: {kind: fall, crest: -1 m, width: 0.5 m}\n");
    lines.append("  out: {from: a " + RUNGS + ", to: fall" + PIPE + ", {high point: 1 m}]}\n");
    MeasuredRun run =
        MeasuredRun.of(
            "solve", Scratch.file(folder, points + lines.toString()), "--format", "json");
    assertEquals(0, run.status(), run.err());
    assertEquals(0, run.flow("fall"));
  }

  /** A pump and a tree of tees, a fall with a valve of its own at each. */
  private static String tree(int tees) {
    StringBuilder points =
        new StringBuilder("points:\n  pond: {kind: basin, level: 0 m}\n  t0: {kind: tee}\n");
    StringBuilder lines = new StringBuilder("lines:\n  up: {from: pond, to: t0, pipe:");
    lines.append(" {inside: 400 mm, roughness: 0.01 mm}, parts: [{pump: p}, {run: 5 m}]}\n");
    String wide = PIPE.replace("60 mm", "100 mm");
    String narrow = PIPE.replace("60 mm", "25 mm");
    for (int i = 1; i <= tees; i++) {
      String crest = 0.5 + 0.01 * (i * 37 % 100) + " m";
      points.append("  t" + i + ": {kind: tee}\n  f" + i + ": {kind: fall, crest: " + crest);
      points.append(", width: 0.5 m, target: 0.2 L/s}\n");
      lines.append("  w" + i + ": {from: t" + (i - 1) / 2 + ", to: t" + i + wide + "]}\n");
      lines.append("  u" + i + ": {from: t" + i + ", to: f" + i + narrow);
      lines.append(", {valve: {type: ball, open: 100 %, adjustable: yes}}]}\n");
    }
    double most = 0.26 * tees;
    String pump = "pumps:\n  p: {points: [{flow: 0 L/s, head: 6 m}, {flow: %s L/s, head: 3 m}]}\n";
    return points + lines.toString() + pump.formatted(most);
  }

  /** What is asked for each line is asked once: the memory asked for grows with the lines. */
  @ParameterizedTest
  @ValueSource(strings = {"balance", "duty", "check", "weak --causes"})
  void memoryGrowsWithTheLines(String command) {
    long few = memoryFor(command, tree(30));
    long many = memoryFor(command, tree(120));
    assertTrue(many < 6 * few, command + ": " + few + ", " + many + " bytes");
  }

  private long memoryFor(String command, String project) {
    List<String> words = new ArrayList<>(List.of(command.split(" ")));
    words.add(1, Scratch.file(folder, project));
    MeasuredRun run = MeasuredRun.of(words.toArray(String[]::new));
    assertEquals(0, run.status(), run.err());
    return run.allocatedBytes();
  }
}
