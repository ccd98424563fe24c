package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Two projects side by side: figures are those that {@code solve} gives for each. */
class CompareCommandTest {
  private static final String FALLS = TwinFalls.FOLDER.resolve("falls.yaml").toString();
  private static final String VALVES = TwinFalls.FOLDER.resolve("ball-valves.yaml").toString();
  private static final String WIDER = "lines.supply.pipe.size=3 in";

  /** Members of points and lines in the answer of {@code solve}. */
  private static final Map<String, String> OF_POINTS =
      Map.of("flowM3PerS", "flowM3PerS", "crestHeadM", "crestHeadM", "headM", "headM");

  private static final Map<String, String> OF_LINES =
      Map.of("lineFlowM3PerS", "flowM3PerS", "lineVelocityMPerS", "velocityMPerS");

  @TempDir private Path folder;

  @Test
  void equalFilesHaveNoDifferences() throws IOException {
    Path copy = Files.createDirectories(folder.resolve("copy"));
    String same = TwinFalls.changed("ball-valves.yaml", copy, "# elbows", "# bends");
    assertTrue(Run.of("compare", VALVES, same).flat().contains("No differences."));
    JsonNode answer = Run.json("compare", VALVES, same);
    assertTrue(answer.get("same").asBoolean());
    assertTrue(answer.get("inputs").isEmpty());
    assertFalse(answer.get("figures").isEmpty());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "small-pond/pond.yaml, lines.supply.pipe.size=2 in",
    "fish-pond/pond.yaml, points.pond.level=-2 in",
    "header-pond/troughs.yaml, points.header pond.level=2 m",
    "twin-falls/ball-valves.yaml, lines.low.valve.open=40 %",
    "dry-vault/vault.yaml, lines.supply.check valve.k=9",
    "hidden-reservoir/fall.yaml, water.temperature=35 C"
  })
  void figuresAreThoseOfEachSolved(String example, String change) {
    String file = Path.of("..", "examples").resolve(example).toString();
    JsonNode compared = Run.json("compare", file, "--set", change);
    JsonNode a = Run.json("solve", file);
    JsonNode b = Run.json("solve", file, "--set", change);
    int held = 0;
    for (JsonNode figure : compared.get("figures")) {
      String at = figure.get("at").asString();
      String name = figure.get("figure").asString();
      String section = OF_POINTS.containsKey(name) ? "points" : "lines";
      String member = OF_POINTS.getOrDefault(name, OF_LINES.get(name));
      if (member != null) {
        assertEquals(a.at("/" + section + "/" + at + "/" + member), figure.get("a"), name);
        assertEquals(b.at("/" + section + "/" + at + "/" + member), figure.get("b"), name);
        held++;
      } else if (a.get("running").has(name)) {
        assertEquals(a.get("running").get(name), figure.get("a"), name);
        assertEquals(b.get("running").get(name), figure.get("b"), name);
        held++;
      }
    }
    assertTrue(held > 5, held + " figures");
    assertEquals(
        a.get("running").get("costPerYear"), compared.at("/a/running/costPerYear"), "a year");
  }

  @Test
  void saysWhatDiffersInTheFiles() {
    JsonNode inputs = Run.json("compare", VALVES, "--set", WIDER).get("inputs");
    assertEquals(1, inputs.size());
    assertEquals("lines.supply.pipe.size", inputs.get(0).get("address").asString());
    assertEquals("2 in", inputs.get(0).get("a").asString());
    assertEquals("3 in", inputs.get(0).get("b").asString());
    assertTrue(Run.of("compare", VALVES, "--set", WIDER).flat().contains(" with " + WIDER));
  }

  @Test
  void theBetterIsTheOneThatMeetsItsTarget() {
    JsonNode targets = Run.json("compare", VALVES, "--set", WIDER).get("targets");
    assertEquals("low fall", targets.get(0).get("at").asString());
    assertEquals("both", targets.get(0).get("better").asString());
    assertEquals("high fall", targets.get(1).get("at").asString());
    assertEquals("b", targets.get(1).get("better").asString());
    String text = Run.of("compare", VALVES, "--set", WIDER).flat();
    assertTrue(text.contains("high fall 1,440 gph 90 % 100 % B"), text);
    Run.assertReported(text, "less electricity a year, but misses the target of \"high fall\".");
  }

  @Test
  void partsInAnotherOrderAndOtherSheetsAreDifferences() throws IOException {
    Path moved = Files.createDirectories(folder.resolve("moved"));
    String other =
        TwinFalls.changed(
            "falls.yaml",
            moved,
            "      - check valve: {k: 2.0}\n      - valve: {k: 0.1}\n",
            "      - valve: {k: 0.1}\n      - check valve: {k: 2.0}\n");
    JsonNode inputs = Run.json("compare", FALLS, other).get("inputs");
    assertEquals("lines.supply.parts", inputs.get(0).get("address").asString());

    Path sheet = moved.resolve("pumps").resolve("new.csv");
    Files.writeString(sheet, TwinFalls.SHEET);
    for (Path old : sheets(moved)) {
      Files.writeString(old, TwinFalls.SHEET);
    }
    JsonNode answer = Run.json("compare", FALLS, other);
    assertFalse(answer.get("sheets").isEmpty());
    assertTrue(Run.of("compare", FALLS, other).flat().contains("The data sheets of"));
  }

  private static List<Path> sheets(Path folder) throws IOException {
    try (var files = Files.walk(folder)) {
      return files.filter(it -> it.toString().endsWith(".csv")).toList();
    }
  }

  @Test
  void aProjectWithoutABalanceIsNamed() throws IOException {
    Path stuck = Files.createDirectories(folder.resolve("stuck"));
    String other =
        TwinFalls.changed(
            "falls.yaml",
            stuck,
            "split: {kind: tee, elevation: 0 in}",
            "split: {kind: tee, elevation: 0 in, draw: 90000 gph}");
    Run run = Run.of("compare", FALLS, other);
    assertEquals(3, run.status(), run.err());
    assertTrue(run.err().startsWith(other + ": "), run.err()); // both files have one name
    assertEquals("", run.out());
  }

  @ParameterizedTest(name = "[{0}] {1}")
  @CsvSource({
    "'', a second file is missing",
    "OTHER --set title=x, leave out --set",
    "nowhere.yaml, there is no such file",
    "--set lines.suply.valve.k=3, did you mean"
  })
  void whatCannotBeComparedIsRefused(String more, String message) {
    String[] words =
        ("compare " + FALLS + " " + more.replace("OTHER", VALVES)).strip().split(" ", -1);
    Run run = Run.of(words);
    assertEquals(2, run.status());
    assertTrue(run.err().contains(message), run.err());
  }

  /** "low" runs too fast whatever the pipe of "supply" is. */
  @Test
  void warningsOfBothAreCounted() {
    String shown = Run.of("compare", VALVES, "--set", "lines.supply.pipe.size=3 in").flat();
    Run.assertReported(shown, "warnings of both are not listed here; \"rillwright solve\" lists");
  }

  @Test
  void neitherFileIsWrittenOver() throws IOException {
    String before = Files.readString(Path.of(VALVES));
    Run run = Run.of("compare", FALLS, VALVES, "--to", VALVES);
    assertEquals(2, run.status());
    assertEquals(before, Files.readString(Path.of(VALVES)));
  }
}
