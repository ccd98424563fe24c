package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * A study under a condition tells what it tells of the project with the condition's changes made.
 */
class StudiesInConditionsTest {
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final String STREAM = EXAMPLES.resolve("long-stream/dry.yaml").toString();
  private static final String FALLS = EXAMPLES.resolve("old-falls/falls.yaml").toString();

  @TempDir private Path folder;

  private static JsonNode json(Run run) {
    assertEquals(0, run.status(), run.err());
    return new ObjectMapper().readTree(run.out());
  }

  @Test
  void streamInAConditionIsTheStreamWithItsChange() {
    JsonNode conditions =
        json(Run.of("stream", STREAM, "--condition", "low pond", "--format", "json"))
            .get("conditions");
    JsonNode set =
        json(Run.of("stream", STREAM, "--set", "points.pond.level=-50 mm", "--format", "json"));

    assertEquals(1, conditions.size());
    assertEquals("low pond", conditions.get(0).get("name").stringValue());
    assertEquals(set.get("basins"), conditions.get(0).get("stream").get("basins"));
    assertEquals(set.get("transit"), conditions.get(0).get("stream").get("transit"));
  }

  @Test
  void oddsInAConditionAreTheOddsWithItsChange() {
    String[] plan = {"--samples", "300", "--seed", "5", "--format", "json"};
    JsonNode conditions =
        json(Run.of(
                "odds",
                FALLS,
                "--condition",
                "autumn",
                "--samples",
                "300",
                "--seed",
                "5",
                "--format",
                "json"))
            .get("conditions");
    JsonNode set =
        json(
            Run.of(
                "odds",
                FALLS,
                "--set",
                "lines.intake.skimmer.clogged=60 %",
                plan[0],
                plan[1],
                plan[2],
                plan[3],
                plan[4],
                plan[5]));

    assertEquals(set.get("falls"), conditions.get(0).get("odds").get("falls"));
    assertEquals(set.get("drivers"), conditions.get(0).get("odds").get("drivers"));
  }

  @Test
  void worstConditionIsNamed() {
    String odds = Run.of("odds", FALLS, "--conditions", "--samples", "200").out();
    String stream = Run.of("stream", STREAM, "--conditions").out();

    assertTrue(odds.contains("is lowest in \"low pond\""), odds);
    assertTrue(stream.contains("does not keep its pump supplied: runs dry in \"as"), stream);
  }

  @Test
  void picturesHaveACurveForEachCondition() throws IOException {
    Path chances = folder.resolve("odds.svg");
    Path levels = folder.resolve("levels.svg");

    assertEquals(
        0,
        Run.of("odds", FALLS, "--conditions", "--samples", "200", "--chart", chances.toString())
            .status());
    assertEquals(
        0,
        Run.of("stream", STREAM, "--condition", "autumn", "--chart", levels.toString()).status());

    for (String condition : new String[] {"as written", "autumn", "low pond"}) {
      assertTrue(Files.readString(chances).contains(">" + condition + "<"), condition);
    }
    assertTrue(Files.readString(levels).contains(">autumn<"));
  }

  @Test
  void timesAndConditionsTogetherAreRefused() {
    Run run = Run.of("stream", STREAM, "--times", "--conditions");

    assertEquals(2, run.status());
    assertTrue(run.err().contains("--set"), run.err());
  }
}
