package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Pumps of a folder, tried in place of the project's. */
class PumpsCommandTest extends ScratchSupplier {
  private static final String TWIN = Path.of("..", "examples", "twin-falls").toString();

  @Test
  void figuresOfACandidateAreThoseOfSolveWithThatPumpInPlace() throws IOException {
    for (Path source : List.of(LongStream.FOLDER.resolve("pumps"))) {
      JsonNode answer = Run.json("pumps", LongStream.PROJECT, "--from", source.toString());
      assertEquals(3, answer.get("candidates").size());
      for (JsonNode candidate : answer.get("candidates")) {
        String model = candidate.get("model").stringValue();
        JsonNode solved =
            Run.json("solve", LongStream.PROJECT, "--set", "lines.supply.pump.model=" + model);
        JsonNode pump = solved.get("lines").get("supply").get("parts").get(1);
        JsonNode operating = candidate.get("operatingPoint");
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
  void dutyInsideIsThatOfDuty() {
    JsonNode answer = Run.json("pumps", LongStream.PROJECT, "--from", LongStream.SUPPLIER);

    JsonNode duty = Run.json("duty", LongStream.PROJECT);
    for (String member : List.of("line", "asTheyStand", "throttled", "governing")) {
      assertEquals(duty.get(member), answer.get("duty").get(member), member);
    }
  }

  @Test
  void pumpStillToBeChosenWorksLikeANamedOne() throws IOException {
    sheet("one.csv", SHEET);
    String planned =
        file(
            Files.readString(Path.of(LongStream.PROJECT))
                .replace("pump: P-180", "pump: to be chosen")
                .replaceAll("(?s)pumps:.*?streams:", "streams:"));

    JsonNode named = Run.json("pumps", LongStream.PROJECT, "--from", list.toString());
    JsonNode open = Run.json("pumps", planned, "--from", list.toString());

    assertEquals(named.get("candidates"), open.get("candidates"));
  }

  @Test
  void oneBadSheetAmongFiftyIsNamedAndTheGoodAreRanked() throws IOException {
    for (int i = 0; i < 49; i++) {
      sheet("pump-" + i + ".csv", SHEET.replace("0,5,150", "0," + (5 + i / 50.0) + ",150"));
    }
    sheet("pump-bad.csv", SHEET.replace("4.3", "four"));

    Run text = Run.of("pumps", LongStream.PROJECT, "--from", list.toString());
    JsonNode answer = Run.json("pumps", LongStream.PROJECT, "--from", list.toString());

    assertEquals(0, text.status());
    assertTrue(text.out().contains("pump-bad.csv:3:5: "), text.out());
    assertEquals(49, answer.get("candidates").size());
    assertEquals(1, answer.get("faults").size());
    assertTrue(answer.get("faults").get(0).stringValue().contains("\"four\""));
  }

  @Test
  void changesAreShown() {
    String change = "lines.intake.skimmer.clogged=40 %";
    String from = LongStream.SUPPLIER;

    Run text = Run.of("pumps", LongStream.PROJECT, "--from", from, "--set", change);
    JsonNode answer = Run.json("pumps", LongStream.PROJECT, "--from", from, "--set", change);

    assertTrue(text.out().contains("Changed with --set: " + change), text.out());
    assertEquals(change, answer.get("changed").get(0).stringValue());
  }

  @Test
  void easierFallIsThrottledWhereTwoShareOnePump() {
    JsonNode answer = Run.json("pumps", TWIN + "/falls.yaml", "--from", TWIN + "/pumps");

    for (JsonNode candidate : answer.get("candidates")) {
      if (candidate.get("throttledPoint").isObject()) {
        assertEquals(
            answer.get("duty").get("throttled").get("flowM3PerS").doubleValue(),
            candidate.get("throttledPoint").get("flowM3PerS").doubleValue(),
            1e-12);
      }
    }
    assertTrue(answer.get("candidates").toString().contains("meets the target when throttled to"));
  }

  @Test
  void pictureIsDrawnWithEveryCandidate() throws IOException {
    Path picture = folder.resolve("pumps.svg");

    Run run =
        Run.of(
            "pumps",
            LongStream.PROJECT,
            "--from",
            LongStream.SUPPLIER,
            "--chart",
            picture.toString());

    assertEquals(0, run.status());
    String svg = Files.readString(picture);
    for (String model : List.of("B-200 at 95 %", "A-90", "D-600", "C-190")) {
      assertTrue(svg.contains(model), model);
    }
    assertFalse(svg.contains("NaN"));
  }
}
