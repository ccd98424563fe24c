package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class SolveConditionsTest {
  private static final String NAMED =
      Path.of("..", "examples", "old-falls", "falls.yaml").toString();

  /** From a tank over an outlet in air through a quadratic loss: 10 L/s times √(level/1 m). */
  private static final String TANK =
      """
      rillwright: 1
      points:
        tank: {kind: basin, level: 1 m}
        spout: {kind: outlet, elevation: 0 m, target: 9 L/s}
      lines:
        pipe: {from: tank, to: spout, parts: [loss: {flow: 10 L/s, head: 1 m, exponent: 2}]}
      """;

  private static final String CONDITIONS =
      """
      conditions:
        dry summer: {points: {tank: {level: 0.49 m}}}
        winter: {points: {tank: {level: 1.44 m}}, lines: {pipe: {loss: {head: 1.21 m}}}}
        empty: {points: {tank: {level: -1 m}}}
      """;

  @TempDir private Path folder;

  private String file(String text) throws IOException {
    return Files.writeString(folder.resolve("project.yaml"), text).toString();
  }

  private static List<String> names(JsonNode answer) {
    List<String> names = new ArrayList<>();
    answer.get("conditions").forEach(condition -> names.add(condition.get("name").stringValue()));
    return names;
  }

  private static double flow(JsonNode answer, int index) {
    JsonNode solve = answer.get("conditions").get(index).get("solve");
    return solve.get("points").get("spout").get("flowM3PerS").doubleValue();
  }

  @Test
  void eachConditionIsTheFileWithItsChanges() throws IOException {
    JsonNode answer = Run.json("solve", file(TANK + CONDITIONS), "--conditions");

    assertEquals(List.of("as written", "dry summer", "winter", "empty"), names(answer));
    assertEquals(0.010, flow(answer, 0), 1e-9);
    assertEquals(0.010 * Math.sqrt(0.49), flow(answer, 1), 1e-9);
    assertEquals(0.010 * Math.sqrt(1.44 / 1.21), flow(answer, 2), 1e-9);
    assertEquals(0, flow(answer, 3));
    assertFalse(answer.get("offered").booleanValue());
    JsonNode changes = answer.get("conditions").get(2).get("changes");
    assertEquals(
        "[{\"quantity\":\"points.tank.level\",\"value\":\"1.44"
            + " m\"},{\"quantity\":\"lines.pipe.loss.head\",\"value\":\"1.21 m\"}]",
        changes.toString());
  }

  @Test
  void theWorstOfThoseAskedForDecides() throws IOException {
    String file = file(TANK + CONDITIONS);
    JsonNode all = Run.json("solve", file, "--conditions");
    assertEquals("empty", all.get("worst").get("spout").get("condition").stringValue());
    assertFalse(all.get("allTargetsMet").booleanValue());

    JsonNode some = Run.json("solve", file, "--condition", "winter", "--condition", "as written");
    assertEquals(List.of("as written", "winter"), names(some));
    JsonNode worst = some.get("worst").get("spout");
    assertEquals("as written", worst.get("condition").stringValue());
    assertEquals(10.0 / 9, worst.get("targetFraction").doubleValue(), 1e-9);
    assertTrue(some.get("allTargetsMet").booleanValue());
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"winter, 0", "dry summer, 1", "empty, 1", "as written, 0"})
  void strictEndsByTheWorst(String condition, int status) throws IOException {
    String file = file(TANK + CONDITIONS);
    assertEquals(status, Run.of("solve", file, "--condition", condition, "--strict").status());
  }

  @Test
  void aConditionWithoutABalanceIsReportedAndTheOthersAreToo() throws IOException {
    String text =
        """
        rillwright: 1
        points:
          pond: {kind: basin, level: 0 m}
          chamber: {kind: chamber, floor: -1 m, intake: -0.8 m}
          tap: {kind: tee, draw: 1 L/s}
          spout: {kind: outlet, elevation: -0.5 m, target: 0.5 L/s}
        lines:
          mouth: {from: pond, to: chamber, parts: [skimmer: {width: 30 cm, sill: -10 cm}]}
          way: {from: chamber, to: tap, parts: [loss: {flow: 10 L/s, head: 1 cm, exponent: 2}]}
          pipe: {from: tap, to: spout, parts: [loss: {flow: 10 L/s, head: 1 m, exponent: 2}]}
        conditions:
          dry summer: {points: {pond: {level: -15 cm}}}
        """;
    Run run = Run.of("solve", file(text), "--conditions");
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("In \"dry summer\": no balance: \"tap\" draws"), run.out());
    JsonNode answer = Run.json("solve", file(text), "--conditions");
    assertTrue(answer.get("conditions").get(1).get("solve").isNull());
    assertEquals("dry summer", answer.get("worst").get("spout").get("condition").stringValue());
    assertEquals(1, Run.of("solve", file(text), "--conditions", "--strict").status());
  }

  @Test
  void whereTheFileNamesNoneUsualOnesAreOffered() {
    String file = Path.of("..", "examples", "fish-pond", "pond.yaml").toString();
    JsonNode answer = Run.json("solve", file, "--conditions");

    assertTrue(answer.get("offered").booleanValue());
    assertEquals(
        List.of("as written", "autumn", "five years fouled", "cold water", "low pond"),
        names(answer));
    String fouled = answer.get("conditions").get(2).get("changes").toString();
    assertTrue(fouled.contains(".pipe.deposit\",\"value\":\"3 mm\""), fouled);
    assertTrue(fouled.contains(".run.roughness\",\"value\":\"1 mm\""), fouled);
    String low = answer.get("conditions").get(4).get("changes").toString();
    for (String lowered : List.of("points.pond.level", "points.return 1.level")) {
      assertTrue(low.contains("{\"quantity\":\"" + lowered + "\",\"value\":\"-50 mm\"}"), low);
    }
  }

  /** What is offered can be written: each change, given to --set, is taken. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {"small-pond/pond.yaml", "twin-falls/falls.yaml", "long-stream/stream.yaml"})
  void whatIsOfferedCanBeSet(String example) {
    String file = Path.of("..", "examples").resolve(example).toString();
    JsonNode answer = Run.json("solve", file, "--conditions");
    int conditions = 0;
    for (JsonNode condition : answer.get("conditions")) {
      List<String> words = new ArrayList<>(List.of("solve", file));
      for (JsonNode change : condition.get("changes")) {
        words.add("--set");
        words.add(change.get("quantity").stringValue() + "=" + change.get("value").stringValue());
      }
      JsonNode solved = Run.json(words.toArray(new String[0]));
      assertEquals(condition.get("solve").get("points"), solved.get("points"), words.toString());
      conditions++;
    }
    assertTrue(conditions >= 4, conditions + " conditions");
  }

  @Test
  void aConditionThatIsNotThereIsReported() {
    Run run = Run.of("solve", NAMED, "--condition", "autum");
    assertEquals(2, run.status());
    assertEquals(
        NAMED + ": there is no condition \"autum\"; did you mean \"autumn\"?", run.err().strip());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "conditions: {low: {points: {tonk: {level: 0 m}}}} | 7:29: condition \"low\": there is no"
            + " \"tonk\"",
        "conditions: {low: {lines: {pipe: {los: {head: 1 m}}}}} | 7:35: condition \"low\": line"
            + " \"pipe\" has no \"los\"",
        "conditions: {low: {points: {tank: {level: {x: 0 m}}}}} | 7:44: condition \"low\":"
            + " \"level\" is",
        "conditions: {low: {points: {tank: {levle: 0 m}}}} | 7:36: condition \"low\": point"
            + " \"tank\": there is no field \"levle\"",
        "conditions: {low: {points: {tank: {level: 3 gph}}}} | 7:43: condition \"low\": point"
            + " \"tank\": level",
        "conditions: {as written: {points: {tank: {level: 3 m}}}} | 7:14: condition \"as written\":"
            + " this name stands for the file without changes",
        "conditions: {low: 3 m} | 7:19: condition \"low\": expected changes",
        "conditions: [low] | 7:13: conditions: expected names with their changes"
      })
  void whatIsWrongWithAConditionIsReportedWhereItStands(String section, String message)
      throws IOException {
    String file = file(TANK + section + "\n");
    for (List<String> command :
        List.of(
            List.of("check", file),
            List.of("solve", file, "--conditions"),
            List.of("solve", file),
            List.of("solve", file, "--condition", "as written"),
            List.of("chart", file, "--to", folder.resolve("curves.png").toString()))) {
      Run run = Run.of(command.toArray(new String[0]));
      assertEquals(2, run.status(), run.out());
      assertTrue(run.err().startsWith(file + ":" + message), run.err());
    }
  }
}
