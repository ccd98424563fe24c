package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import rillwright.cli.examples.ExampleSheets;
import tools.jackson.databind.JsonNode;

/** Pumps judged in the conditions of the project. */
class PumpsConditionsTest extends ScratchSupplier {
  /** The long stream with conditions. */
  private String streamIn(String conditions) throws IOException {
    ExampleSheets.layInto(folder, LongStream.FOLDER);
    return file(
        Files.readString(Path.of(LongStream.PROJECT)) + "\nconditions: {" + conditions + "}\n");
  }

  @Test
  void conditionsAreThoseOfSolveWithThatPumpInPlace() throws IOException {
    String project = streamIn("raised: {points: {spill box: {crest: 3.5 m}}}");

    JsonNode answer =
        Run.json("pumps", project, "--from", LongStream.FOLDER + "/pumps", "--conditions");

    assertFalse(answer.get("offered").booleanValue());
    assertEquals(2, answer.get("conditions").size());
    for (JsonNode candidate : answer.get("candidates")) {
      String model = candidate.get("model").stringValue();
      JsonNode solved =
          Run.json(
              "solve",
              project,
              "--set",
              "lines.supply.pump.model=" + model,
              "--condition",
              "raised");
      JsonNode points = solved.get("conditions").get(0).get("solve").get("points");
      JsonNode raised = candidate.get("conditions").get("raised");
      assertEquals(
          points.get("spill box").get("flowM3PerS").doubleValue(),
          raised.get("fallsM3PerS").get("spill box").doubleValue(),
          1e-12,
          model);
      assertEquals(
          raised.get("meetsTargets").booleanValue()
              && candidate.get("conditions").get("as written").get("meetsTargets").booleanValue(),
          candidate.get("meetsTargets").booleanValue(),
          model);
    }
  }

  @Test
  void chamberThatIsDrawnDownHasItsMark() {
    String text = inCondition("low pond").flat();

    Run.assertReported(
        text,
        "s 119 %",
        "\"s\": with the valves as they stand no more comes in than this, and the chamber is drawn"
            + " down to the pump's intake.");
  }

  @Test
  void withoutConditionsNothingIsSaidOfThem() {
    JsonNode answer = Run.json("pumps", LongStream.PROJECT, "--from", LongStream.FOLDER + "/pumps");

    assertFalse(answer.has("conditions"));
    assertFalse(answer.has("offered"));
    assertFalse(answer.get("candidates").get(0).has("conditions"));
  }

  @Test
  void conditionThatTakesThePumpAwayIsRefused() throws IOException {
    String project = streamIn("bare: {lines: {supply: {parts: [run: 36 m]}}}");

    Run.of("pumps", project, "--from", LongStream.FOLDER + "/pumps", "--conditions")
        .assertRefused("bare", "supply");
  }

  @Test
  void unknownConditionIsRefusedWithTheOneThatMayBeMeant() {
    inCondition("autum")
        .assertRefused("there is no condition \"autum\"", "did you mean \"autumn\"");
  }

  private static Run inCondition(String name) {
    String sheets = LongStream.FOLDER + "/pumps";
    return Run.of("pumps", LongStream.PROJECT, "--from", sheets, "--condition", name);
  }
}
