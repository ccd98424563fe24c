package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.command.Run;
import rillwright.cli.examples.ExampleSheets;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Commands that ask about one and the same network end alike. */
class OneAnswerTest {
  /** Behind the check valve that points the wrong way nothing can be drawn. */
  private static final String DRAWN =
      """
      points:
        pond: {kind: basin, level: 0 m, area: 20 m2}
        split: {kind: tee, elevation: 0 m}
        tap: {kind: tee, elevation: 0 m, draw: %s}
        fall: {kind: fall, crest: 1 m, width: 0.5 m, target: 1 L/s}
      lines:
        supply: {from: pond, to: split, pipe: {inside: 50 mm, roughness: 0.01 mm},
          parts: [{pump: %s}, {run: 2 m}]}
        up: {from: split, to: fall, pipe: {inside: 50 mm, roughness: 0.01 mm}, parts: [{run: 2 m}]}
        aside: {from: tap, to: split, pipe: {inside: 50 mm, roughness: 0.01 mm},
          parts: [{check valve: {k: 2}}, {run: 2 m}]}
      pumps:
        p: {points: [{flow: 0 L/s, head: 4 m}, {flow: 4 L/s, head: 0 m}]}
      conditions:
        tapped: {points: {tap: {draw: 1 L/s}}}
        low: {points: {pond: {level: -10 cm}}}
      """;

  @TempDir private Path folder;

  private MeasuredRun run(String command, String draw, String pump) {
    String[] words = command.split(" ", -1);
    String[] arguments = new String[words.length + 1];
    arguments[0] = words[0];
    arguments[1] = Scratch.file(folder, DRAWN.formatted(draw, pump));
    System.arraycopy(words, 1, arguments, 2, words.length - 1);
    return MeasuredRun.of(arguments);
  }

  @ParameterizedTest
  @CsvSource({"duty", "chart --to x.svg", "chart --format json", "pumps --from %s"})
  void aDrawThatNoPumpCanMeetIsNoBalance(String command) {
    String sheets = Path.of("../examples/twin-falls/pumps").toAbsolutePath().toString();
    String words = command.formatted(sheets).replace("x.svg", folder + "/x.svg");
    MeasuredRun run = run(words, "1 L/s", "to be chosen");
    assertEquals(3, run.status(), run.err());
    assertEquals("", run.out());
    assertTrue(run.err().contains("tap"), run.err());
  }

  @Test
  void aConditionEndsLikeItsChanges() {
    MeasuredRun set = run("solve --set points.tap.draw=1L/s", "0 L/s", "p");
    assertEquals(3, set.status());
    MeasuredRun condition = run("solve --condition tapped", "0 L/s", "p");
    assertEquals(3, condition.status());
    assertTrue(condition.out().contains("no balance"), condition.out());
    assertEquals(3, run("stream --condition tapped", "0 L/s", "p").status());
  }

  /** Beside a condition that has a balance, the one without is named in its place. */
  @Test
  void oneOfSeveralConditionsWithoutABalanceIsReported() {
    MeasuredRun both = run("solve --conditions", "0 L/s", "p");
    assertEquals(0, both.status(), both.err());
    assertTrue(both.out().contains("no balance"), both.out());
    assertEquals(1, run("solve --conditions --strict", "0 L/s", "p").status());
  }

  /** What falls can have of their targets at best is one figure, whoever is asked. */
  @ParameterizedTest
  @CsvSource({"P-180", "P-400"})
  void theBestFractionIsOne(String pump) throws IOException {
    Path example = Path.of("../examples/twin-falls");
    String file = example.resolve("ball-valves.yaml").toString();
    String more = "points.high fall.target=2400 gph";
    Path sheets = Files.createDirectories(folder.resolve("sheets"));
    String sheet = pump + ".csv";
    Files.copy(example.resolve("pumps").resolve(sheet), sheets.resolve(sheet));
    String chosen = "lines.supply.pump=" + pump;
    JsonNode balance = json("balance", file, "--set", more, "--set", chosen);
    double best = balance.get("targetFraction").asDouble();
    JsonNode pumps = json("pumps", file, "--set", more, "--from", sheets.toString());
    JsonNode pipes =
        json("pipes", file, "--set", more, "--set", chosen, "--line", "supply", "--sizes", "2 in");
    assertTrue(best < 0.95, "falls short: " + best);
    for (JsonNode answer : List.of(pumps, pipes)) {
      JsonNode tried = answer.get("candidates").get(0);
      assertEquals("falls-short", tried.get("verdictCode").asString());
      assertEquals(best, tried.get("attainableFraction").asDouble(), 1e-4);
    }
  }

  /**
   * A pump whose curve passes a little above the duty of "duty" meets the targets for "pumps",
   * "pipes" and "balance"; one that passes far below, since up to 5 % short of a target counts as
   * met, meets them for none.
   */
  @ParameterizedTest
  @CsvSource({"1.002, true", "0.7, false"})
  void aPumpThatMakesTheDutyMeetsTheTargetsForAll(double ofTheHead, boolean meets)
      throws IOException {
    Path example = Files.createDirectories(folder.resolve("job"));
    Files.copy(
        Path.of("../examples/twin-falls/ball-valves.yaml"), example.resolve("ball-valves.yaml"));
    ExampleSheets.layInto(example, Path.of("../examples/twin-falls"));
    String file = example.resolve("ball-valves.yaml").toString();
    JsonNode duty = json("duty", file, "--set", "lines.supply.pump=to be chosen").get("throttled");
    double flow = 3600 * duty.get("flowM3PerS").asDouble();
    double head = ofTheHead * duty.get("headM").asDouble();
    Path sheets = Files.createDirectories(folder.resolve("made"));
    Files.writeString(
        sheets.resolve("made.csv"),
        String.format(
            Locale.ROOT,
            "flow [m3/h],head [m],power [W]%n0,%.6f,200%n%.6f,%.6f,300%n%.6f,0,350%n",
            1.4 * head,
            flow,
            head,
            2 * flow));

    JsonNode pumps = json("pumps", file, "--from", sheets.toString()).get("candidates").get(0);
    List<String> made =
        List.of(
            "--set",
            "pumps.made=" + sheets.resolve("made.csv"),
            "--set",
            "lines.supply.pump.model=made",
            "--sheets",
            sheets.toString());
    JsonNode balance = json(with(made, "balance", file));
    JsonNode pipes =
        json(with(made, "pipes", file, "--line", "supply", "--sizes", "2 in"))
            .get("candidates")
            .get(0);
    assertEquals(meets, balance.get("targetFraction").asDouble() >= 1, balance.toString());
    for (JsonNode tried : List.of(pumps, pipes)) {
      assertEquals(meets, tried.get("meetsTargets").asBoolean(), tried.toString());
      if (!meets) {
        assertEquals(
            balance.get("targetFraction").asDouble(),
            tried.get("attainableFraction").asDouble(),
            1e-4);
      }
    }
  }

  private static String[] with(List<String> more, String... words) {
    return Stream.concat(Stream.of(words), more.stream()).toArray(String[]::new);
  }

  private static JsonNode json(String... words) {
    List<String> command = new ArrayList<>(List.of(words));
    command.addAll(List.of("--format", "json"));
    MeasuredRun run = MeasuredRun.of(command.toArray(String[]::new));
    assertEquals(0, run.status(), run.err());
    return new ObjectMapper().readTree(run.out());
  }

  /** At a level at which the skimmer lets nothing through the draw goes short: not so today. */
  @Test
  void aLevelThatOnlyTheBudgetTriesIsNoLackOfBalance() {
    String behindASkimmer =
        """
        points:
          pond: {kind: basin, level: 0 m, area: 20 m2, overflow: 5 cm}
          chamber: {kind: chamber, floor: -80 cm, intake: -50 cm, area: 0.5 m2}
          tap: {kind: tee, elevation: 0 m, draw: 600 L/h}
          fall: {kind: fall, crest: 1 m, width: 0.5 m}
        lines:
          intake: {from: pond, to: chamber, parts: [{skimmer: {width: 30 cm, height: 18 cm, sill: -10 cm}}]}
          supply: {from: chamber, to: tap, pipe: {inside: 50 mm, roughness: 0.01 mm},
            parts: [{pump: p}, {run: 2 m}]}
          up: {from: tap, to: fall, pipe: {inside: 50 mm, roughness: 0.01 mm}, parts: [{run: 2 m}]}
        pumps:
          p: {points: [{flow: 0 L/s, head: 4 m}, {flow: 4 L/s, head: 0 m}]}
        streams:
          main: {from: fall, to: pond, reaches: [{length: 8 m, drop: 0.3 m, width: 60 cm, bed: cobble}]}
        """;
    String project = Scratch.file(folder, behindASkimmer);
    for (String command : List.of("solve", "stream")) {
      MeasuredRun run = MeasuredRun.of(command, project);
      assertEquals(0, run.status(), command + run.err());
    }
  }

  /** Over several conditions there is no one point to which a pump is throttled. */
  @Test
  void whatIsThrottledInConditionsIsSaidWithoutAPoint() throws IOException {
    Path file = folder.resolve("drawn.json");
    Files.writeString(file, ProjectTree.json(RandomProject.of(1144970617)));
    String sheets = Path.of("..", "examples", "long-stream", "supplier").toString();
    Run run =
        Run.of("pumps", file.toString(), "--from", sheets, "--conditions", "--format", "json");
    assertEquals(0, run.status(), run.err());
  }
}
