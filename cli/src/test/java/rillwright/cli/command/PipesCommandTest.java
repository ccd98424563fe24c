package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.examples.ExampleSheets;
import tools.jackson.databind.JsonNode;

/** Sizes of pipe, tried in place of the project's. */
class PipesCommandTest {
  private static final String FALLS = Path.of("..", "examples", "twin-falls", "falls.yaml") + "";
  private static final String STRONGER = "lines.supply.pump.model=P-400";

  @TempDir private Path folder;

  @Test
  void conditionsOfASizeAreThoseOfSolveWithItInPlace() {
    JsonNode answer =
        Run.json(
            "pipes",
            LongStream.PROJECT,
            "--line",
            "supply",
            "--sizes",
            "50 mm, 75 mm",
            "--set",
            STRONGER,
            "--condition",
            "five years fouled");

    assertTrue(answer.get("offered").booleanValue());
    for (JsonNode choice : answer.get("candidates")) {
      String size = choice.get("sizes").get("supply").stringValue();
      JsonNode solved =
          Run.json(
              "solve",
              LongStream.PROJECT,
              "--set",
              STRONGER,
              "--set",
              "lines.supply.pipe.size=" + size,
              "--condition",
              "five years fouled");
      JsonNode points = solved.get("conditions").get(0).get("solve").get("points");
      assertEquals(
          points.get("spill box").get("flowM3PerS").doubleValue(),
          choice
              .get("conditions")
              .get("five years fouled")
              .get("fallsM3PerS")
              .get("spill box")
              .doubleValue(),
          1e-12,
          size);
      assertEquals("five years fouled", choice.get("worstCondition").stringValue());
    }
  }

  @Test
  void figuresOfASizeAreThoseOfSolveWithItInPlace() {
    JsonNode answer =
        Run.json(
            "pipes",
            LongStream.PROJECT,
            "--line",
            "supply",
            "--sizes",
            "50 mm, 75 mm",
            "--set",
            STRONGER);

    for (JsonNode choice : answer.get("candidates")) {
      String size = choice.get("sizes").get("supply").stringValue();
      JsonNode line =
          Run.json(
                  "solve",
                  LongStream.PROJECT,
                  "--set",
                  STRONGER,
                  "--set",
                  "lines.supply.pipe.size=" + size)
              .get("lines")
              .get("supply");
      JsonNode pump = line.get("parts").get(1);
      assertEquals("pump", pump.get("part").stringValue());
      for (String figure : List.of("flowM3PerS", "headM", "powerW")) {
        assertEquals(
            pump.get(figure).doubleValue(),
            choice.get("operatingPoint").get(figure).doubleValue(),
            1e-9);
      }
      assertEquals(
          line.get("velocityMPerS").doubleValue(),
          choice.get("lines").get("supply").get("velocityMPerS").doubleValue(),
          1e-12);
    }
  }

  @Test
  void costIsPipeAndElectricityAtThePricesOfTheFile() {
    JsonNode choice =
        Run.json(
                "pipes",
                LongStream.PROJECT,
                "--line",
                "supply",
                "--sizes",
                "75 mm",
                "--years",
                "5",
                "--set",
                STRONGER,
                "--set",
                "points.spill box.target=12 m3/h")
            .get("candidates")
            .get(0);

    // 36 m at 6.90 EUR; 8760 hours a year at 0.28 EUR/kWh; the sheet has no price
    assertEquals(36 * 6.90, choice.get("materialCost").doubleValue(), 1e-9);
    double watts = choice.get("operatingPoint").get("powerW").doubleValue();
    assertEquals(watts * 8.760, choice.get("energyKwhPerYear").doubleValue(), 1e-9 * watts);
    assertEquals(
        36 * 6.90 + 5 * 0.28 * 8.760 * watts, choice.get("costOverYears").doubleValue(), 1e-6);
    assertTrue(choice.get("meetsTargets").booleanValue());
    // 36 m of 67.8 mm
    assertEquals(36 * Math.PI / 4 * 0.0678 * 0.0678, choice.get("holdUpM3").doubleValue(), 1e-12);
  }

  @Test
  void fittingsWithAPriceCountInTheirSize() throws IOException {
    String text =
        Files.readString(Path.of(FALLS))
            .replaceFirst(
                "prices: \\{pipe: \\{", "prices: {fittings: {elbow 90 2 in: 3.10 USD}, pipe: {")
            .replaceFirst(
                "(?s)(  supply:.*?parts:\n)", "$1      - fitting: {type: elbow 90, count: 3}\n");
    ExampleSheets.layInto(folder, Path.of("..", "examples", "twin-falls"));
    String file = Files.writeString(folder.resolve("falls.yaml"), text).toString();

    JsonNode with = Run.json("pipes", file, "--line", "supply", "--sizes", "2 in, 3 in");
    JsonNode without = Run.json("pipes", FALLS, "--line", "supply", "--sizes", "2 in, 3 in");

    assertEquals(9.30, cost(with, "2 in") - cost(without, "2 in"), 1e-9);
    assertEquals(0, cost(with, "3 in") - cost(without, "3 in"), 1e-9);
  }

  private static double cost(JsonNode answer, String size) {
    for (JsonNode choice : answer.get("candidates")) {
      if (choice.get("sizes").get("supply").stringValue().equals(size)) {
        return choice.get("materialCost").doubleValue();
      }
    }
    throw new AssertionError(size + " is not among the choices");
  }

  @Test
  void withOneAndTheSamePumpItSaysThatLargerPipeAddsFlowAndSavesNothing() {
    Run run =
        Run.of(
            "pipes",
            LongStream.PROJECT,
            "--line",
            "supply",
            "--sizes",
            "50 mm, 63 mm",
            "--set",
            STRONGER);

    assertTrue(run.out().contains("a larger pipe adds flow and saves nothing"), run.out());
    assertTrue(run.out().contains("Least pipe cost of those that meet"), run.out());
    // P-400 at 3.44 L/s, the flow that is named, not at the 2.5 L/s of the target
    assertTrue(
        run.out().replaceAll("\\s+", " ").contains("draw 396 W instead of 371 W"), run.out());
    assertFalse(run.out().contains("in year"), run.out());
    assertTrue(run.out().contains("Changed with --set: " + STRONGER));
  }

  /** At 3 in the two lines run slow; the fast one is "low", whose size is not looked for. */
  @Test
  void aSpeedThatIsWarnedOfElsewhereNamesItsLine() {
    String[] lines = {"pipes", FALLS, "--line", "supply", "--line", "high", "--sizes", "3 in"};
    Run.assertReported(Run.of(lines).flat(), "2.65 ft/s 0.9 ft 22 gal fast discharge in \"low\", ");
  }

  @Test
  void jointDecisionGivesEachSizeItsOwnCheapestPump() {
    String sizes = "50 mm, 63 mm, 75 mm, 90 mm";
    JsonNode answer =
        Run.json(
            "pipes",
            LongStream.PROJECT,
            "--line",
            "supply",
            "--sizes",
            sizes,
            "--from",
            LongStream.SUPPLIER);

    for (JsonNode choice : answer.get("candidates")) {
      String size = choice.get("sizes").get("supply").stringValue();
      JsonNode best =
          Run.json(
                  "pumps",
                  LongStream.PROJECT,
                  "--from",
                  LongStream.SUPPLIER,
                  "--set",
                  "lines.supply.pipe.size=" + size)
              .get("candidates")
              .get(0);
      for (String figure : List.of("model", "speed", "energyKwhPerYear", "price", "verdict")) {
        assertEquals(best.get(figure), choice.get(figure), size + " " + figure);
      }
      assertEquals(
          best.get("costOverYears").doubleValue() + choice.get("materialCost").doubleValue(),
          choice.get("costOverYears").doubleValue(),
          1e-9);
    }
    assertEquals(
        answer.get("candidates").get(0).get("sizes").toString(),
        answer.get("leastCost").toString());
  }

  @Test
  void linesTogetherTakeOneSizeAndEachFreelyAllCombinations() {
    String[] lines = {
      "pipes", FALLS, "--line", "supply", "--line", "high", "--sizes", "2 in, 3 in"
    };
    String[] free = Arrays.copyOf(lines, lines.length + 1);
    free[lines.length] = "--independent";

    assertEquals(2, Run.json(lines).get("candidates").size());
    assertEquals(4, Run.json(free).get("candidates").size());
    for (JsonNode choice : Run.json(lines).get("candidates")) {
      assertEquals(choice.get("sizes").get("supply"), choice.get("sizes").get("high"));
    }
  }

  @Test
  void pictureHasEverySizeUnderThePump() throws IOException {
    Path picture = folder.resolve("pipes.svg");

    Run run =
        Run.of(
            "pipes",
            LongStream.PROJECT,
            "--line",
            "supply",
            "--sizes",
            "50 mm, 63 mm, 90 mm",
            "--set",
            STRONGER,
            "--chart",
            picture.toString());

    assertEquals(0, run.status(), run.err());
    String svg = Files.readString(picture);
    for (String name : List.of("50 mm", "63 mm", "90 mm", "P-400")) {
      assertTrue(svg.contains(name), name);
    }
  }
}
