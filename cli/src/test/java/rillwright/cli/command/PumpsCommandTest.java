package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class PumpsCommandTest {
  private static final Path EXAMPLE = Path.of("..", "examples", "long-stream");
  private static final String PROJECT = EXAMPLE.resolve("stream.yaml").toString();
  private static final String TWIN = Path.of("..", "examples", "twin-falls").toString();

  private static final String SHEET =
      """
      flow [L/s],head [m],power [W]
      0,5,150
      1.6,4.3,200
      3.9,0,234
      """;

  @TempDir private Path folder;

  private Path list;

  @BeforeEach
  void makeList() throws IOException {
    list = Files.createDirectory(folder.resolve("list"));
  }

  private void sheet(String name, String text) throws IOException {
    Files.writeString(list.resolve(name), text);
  }

  private String file(String text) throws IOException {
    return Files.writeString(folder.resolve("pond.yaml"), text).toString();
  }

  private static JsonNode json(Run run) {
    assertEquals("", run.err());
    assertEquals(0, run.status());
    return new ObjectMapper().readTree(run.out());
  }

  private static void assertRefused(Run run, String... words) {
    assertEquals(2, run.status(), run.out());
    assertEquals("", run.out());
    for (String word : words) {
      assertTrue(run.err().contains(word), run.err());
    }
  }

  @Test
  void figuresOfACandidateAreThoseOfSolveWithThatPumpInPlace() throws IOException {
    for (Path source : List.of(EXAMPLE.resolve("pumps"))) {
      JsonNode answer =
          json(Run.of("pumps", PROJECT, "--from", source.toString(), "--format", "json"));
      assertEquals(3, answer.get("candidates").size());
      for (JsonNode candidate : answer.get("candidates")) {
        String model = candidate.get("model").stringValue().replace('-', ' ');
        JsonNode solved =
            json(
                Run.of(
                    "solve",
                    PROJECT,
                    "--set",
                    "lines.supply.pump.model=" + model,
                    "--format",
                    "json"));
        JsonNode pump = solved.get("lines").get("supply").get("parts").get(1);
        JsonNode operating = candidate.get("operating");
        for (String figure : List.of("flowM3PerS", "headM", "powerW")) {
          assertEquals(
              pump.get(figure).doubleValue(), operating.get(figure).doubleValue(), 1e-9, figure);
        }
        assertEquals(
            solved.get("points").get("spill box").get("flowM3PerS").doubleValue(),
            candidate.get("fallsM3PerS").get("spill box").doubleValue(),
            1e-12);
      }
    }
  }

  @Test
  void conditionsAreThoseOfSolveWithThatPumpInPlace() throws IOException {
    String project =
        file(
            Files.readString(Path.of(PROJECT))
                    .replace("pumps/", EXAMPLE.toAbsolutePath() + "/pumps/")
                + "\nconditions: {raised: {points: {spill box: {crest: 3.5 m}}}}\n");

    JsonNode answer =
        json(
            Run.of(
                "pumps",
                project,
                "--from",
                EXAMPLE + "/pumps",
                "--conditions",
                "--format",
                "json"));

    assertFalse(answer.get("offered").booleanValue());
    assertEquals(2, answer.get("conditions").size());
    for (JsonNode candidate : answer.get("candidates")) {
      String model = candidate.get("model").stringValue().replace('-', ' ');
      JsonNode solved =
          json(
              Run.of(
                  "solve",
                  project,
                  "--set",
                  "lines.supply.pump.model=" + model,
                  "--condition",
                  "raised",
                  "--format",
                  "json"));
      JsonNode points = solved.get("conditions").get(0).get("solve").get("points");
      JsonNode raised = candidate.get("conditions").get("raised");
      assertEquals(
          points.get("spill box").get("flowM3PerS").doubleValue(),
          raised.get("fallsM3PerS").get("spill box").doubleValue(),
          1e-12,
          model);
      assertEquals(
          raised.get("does").booleanValue()
              && candidate.get("conditions").get("as written").get("does").booleanValue(),
          candidate.get("does").booleanValue(),
          model);
    }
  }

  @Test
  void withoutConditionsNothingIsToldOfThem() {
    JsonNode answer =
        json(Run.of("pumps", PROJECT, "--from", EXAMPLE + "/pumps", "--format", "json"));

    assertFalse(answer.has("conditions"));
    assertFalse(answer.has("offered"));
    assertFalse(answer.get("candidates").get(0).has("conditions"));
  }

  @Test
  void conditionThatTakesThePumpAwayIsRefused() throws IOException {
    String project =
        file(
            Files.readString(Path.of(PROJECT))
                    .replace("pumps/", EXAMPLE.toAbsolutePath() + "/pumps/")
                + "\nconditions: {bare: {lines: {supply: {parts: [run: 36 m]}}}}\n");

    assertRefused(
        Run.of("pumps", project, "--from", EXAMPLE + "/pumps", "--conditions"), "bare", "supply");
  }

  @Test
  void unknownConditionIsRefusedWithTheOneThatMayBeMeant() {
    assertRefused(
        Run.of("pumps", PROJECT, "--from", EXAMPLE + "/pumps", "--condition", "autum"),
        "there is no condition \"autum\"",
        "did you mean \"autumn\"");
  }

  @Test
  void dutyInsideIsThatOfDuty() {
    JsonNode answer =
        json(Run.of("pumps", PROJECT, "--from", EXAMPLE + "/supplier", "--format", "json"));

    JsonNode duty = json(Run.of("duty", PROJECT, "--format", "json"));
    for (String member : List.of("line", "asTheyStand", "throttled", "governing")) {
      assertEquals(duty.get(member), answer.get("duty").get(member), member);
    }
  }

  @Test
  void pumpStillToBeChosenWorksLikeANamedOne() throws IOException {
    sheet("one.csv", SHEET);
    String planned =
        file(
            Files.readString(Path.of(PROJECT))
                .replace("pump: dipper 180", "pump: to be chosen")
                .replaceAll("(?s)pumps:.*?streams:", "streams:"));

    JsonNode named = json(Run.of("pumps", PROJECT, "--from", list.toString(), "--format", "json"));
    JsonNode open = json(Run.of("pumps", planned, "--from", list.toString(), "--format", "json"));

    assertEquals(named.get("candidates"), open.get("candidates"));
  }

  @Test
  void oneBadSheetAmongFiftyIsNamedAndTheGoodAreRanked() throws IOException {
    for (int i = 0; i < 49; i++) {
      sheet("pump-" + i + ".csv", SHEET.replace("0,5,150", "0," + (5 + i / 50.0) + ",150"));
    }
    sheet("pump-bad.csv", SHEET.replace("4.3", "four"));

    Run text = Run.of("pumps", PROJECT, "--from", list.toString());
    JsonNode answer = json(Run.of("pumps", PROJECT, "--from", list.toString(), "--format", "json"));

    assertEquals(0, text.status());
    assertTrue(text.out().contains("pump-bad.csv:3:5: "), text.out());
    assertEquals(49, answer.get("candidates").size());
    assertEquals(1, answer.get("faults").size());
    assertTrue(answer.get("faults").get(0).stringValue().contains("\"four\""));
  }

  @Test
  void emptyFolderAndNoFolderAreTold() throws IOException {
    assertRefused(Run.of("pumps", PROJECT, "--from", list.toString()), "no data sheet lies");
    assertRefused(Run.of("pumps", PROJECT, "--from", folder + "/none"), "there is no such folder");
    assertRefused(Run.of("pumps", PROJECT, "--from", PROJECT), "name the folder");
    assertRefused(Run.of("pumps", PROJECT), "--from");
    sheet("bad.csv", "flow,head\n");
    assertRefused(Run.of("pumps", PROJECT, "--from", list.toString()), "bad.csv:1");
  }

  @Test
  void noWishAnywhereIsToldWithHowToWriteOne() throws IOException {
    sheet("one.csv", SHEET);
    String file =
        file(
            Files.readString(Path.of(PROJECT))
                .replace(", want: 9 m3/h", "")
                .replaceAll("(?s)pumps:.*?streams:", "streams:")
                .replace("pump: dipper 180", "pump: to be chosen"));

    assertRefused(Run.of("pumps", file, "--from", list.toString()), "no fall or outlet", "want:");
  }

  @Test
  void unknownLineIsToldWithTheNearest() throws IOException {
    sheet("one.csv", SHEET);

    assertRefused(
        Run.of("pumps", PROJECT, "--from", list.toString(), "--line", "suply"),
        "did you mean \"supply\"?");
    assertRefused(
        Run.of("pumps", PROJECT, "--from", list.toString(), "--line", "intake"), "has no pump");
  }

  @Test
  void severalPumpsNeedALine() throws IOException {
    sheet("one.csv", SHEET);
    String line =
        """

          second:
            from: pond
            to: spill box
            pipe: {material: PVC-U PN 10, size: 75 mm}
            parts: [{pump: dipper 400}, {run: 30 m}]

        pumps:
        """;
    String second =
        Files.readString(Path.of(PROJECT))
            .replace("\npumps:\n", line)
            .replace("pumps/dipper", EXAMPLE.toAbsolutePath() + "/pumps/dipper");
    String file = file(second);

    assertRefused(Run.of("pumps", file, "--from", list.toString()), "--line: supply, second");
    assertEquals(0, Run.of("pumps", file, "--from", list.toString(), "--line", "second").status());
  }

  @Test
  void changesAreShown() {
    String change = "lines.intake.skimmer.clogged=40 %";
    String from = EXAMPLE + "/supplier";

    Run text = Run.of("pumps", PROJECT, "--from", from, "--set", change);
    JsonNode answer =
        json(Run.of("pumps", PROJECT, "--from", from, "--set", change, "--format", "json"));

    assertTrue(text.out().contains("Changed for this answer: " + change), text.out());
    assertEquals(change, answer.get("changed").get(0).stringValue());
  }

  @Test
  void easierFallIsThrottledWhereTwoShareOnePump() {
    JsonNode answer =
        json(Run.of("pumps", TWIN + "/falls.yaml", "--from", TWIN + "/pumps", "--format", "json"));

    for (JsonNode candidate : answer.get("candidates")) {
      if (candidate.get("throttled").isObject()) {
        assertEquals(
            answer.get("duty").get("throttled").get("flowM3PerS").doubleValue(),
            candidate.get("throttled").get("flowM3PerS").doubleValue(),
            1e-12);
      }
    }
    assertTrue(answer.get("candidates").toString().contains("does it when throttled to"));
  }

  @Test
  void numbersThatMakeNoSenseAreRefused() throws IOException {
    sheet("one.csv", SHEET);
    String from = list.toString();

    assertRefused(Run.of("pumps", PROJECT, "--from", from, "--upto", "0"), "--upto is 0");
    assertRefused(Run.of("pumps", PROJECT, "--from", from, "--years", "0"), "--years is 0");
    assertRefused(Run.of("pumps", PROJECT, "--from", from, "--chart", "p.gif"), ".png or .svg");
  }

  @Test
  void pictureIsDrawnWithEveryCandidate() throws IOException {
    Path picture = folder.resolve("pumps.svg");

    Run run =
        Run.of("pumps", PROJECT, "--from", EXAMPLE + "/supplier", "--chart", picture.toString());

    assertEquals(0, run.status());
    String svg = Files.readString(picture);
    for (String model : List.of("kestrel-200 at 95 %", "brook-90", "heron-600", "tern-190")) {
      assertTrue(svg.contains(model), model);
    }
    assertFalse(svg.contains("NaN"));
  }
}
