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
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class PipesCommandTest {
  private static final Path EXAMPLE = Path.of("..", "examples", "long-stream");
  private static final String PROJECT = EXAMPLE.resolve("stream.yaml").toString();
  private static final String SUPPLIER = EXAMPLE.resolve("supplier").toString();
  private static final String FALLS = Path.of("..", "examples", "twin-falls", "falls.yaml") + "";
  private static final String STRONGER = "lines.supply.pump.model=dipper 400";

  @TempDir private Path folder;

  private static JsonNode json(String... arguments) {
    String[] all = new String[arguments.length + 2];
    System.arraycopy(arguments, 0, all, 0, arguments.length);
    all[arguments.length] = "--format";
    all[arguments.length + 1] = "json";
    Run run = Run.of(all);
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
  void conditionsOfASizeAreThoseOfSolveWithItInPlace() {
    JsonNode answer =
        json(
            "pipes",
            PROJECT,
            "--line",
            "supply",
            "--sizes",
            "50 mm, 75 mm",
            "--set",
            STRONGER,
            "--condition",
            "five years fouled");

    assertTrue(answer.get("offered").booleanValue());
    for (JsonNode choice : answer.get("choices")) {
      String size = choice.get("sizes").get("supply").stringValue();
      JsonNode solved =
          json(
              "solve",
              PROJECT,
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
        json("pipes", PROJECT, "--line", "supply", "--sizes", "50 mm, 75 mm", "--set", STRONGER);

    for (JsonNode choice : answer.get("choices")) {
      String size = choice.get("sizes").get("supply").stringValue();
      JsonNode line =
          json("solve", PROJECT, "--set", STRONGER, "--set", "lines.supply.pipe.size=" + size)
              .get("lines")
              .get("supply");
      JsonNode pump = line.get("parts").get(1);
      assertEquals("pump", pump.get("part").stringValue());
      for (String figure : List.of("flowM3PerS", "headM", "powerW")) {
        assertEquals(
            pump.get(figure).doubleValue(),
            choice.get("operating").get(figure).doubleValue(),
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
        json(
                "pipes",
                PROJECT,
                "--line",
                "supply",
                "--sizes",
                "75 mm",
                "--years",
                "5",
                "--set",
                STRONGER,
                "--set",
                "points.spill box.want=12 m3/h")
            .get("choices")
            .get(0);

    // 36 m at 6.90 EUR; 8760 hours a year at 0.28 EUR/kWh; the sheet has no price
    assertEquals(36 * 6.90, choice.get("materialCost").doubleValue(), 1e-9);
    double watts = choice.get("operating").get("powerW").doubleValue();
    assertEquals(watts * 8.760, choice.get("energyPerYear").doubleValue(), 1e-9 * watts);
    assertEquals(
        36 * 6.90 + 5 * 0.28 * 8.760 * watts, choice.get("costOverYears").doubleValue(), 1e-6);
    assertTrue(choice.get("does").booleanValue());
    // 36 m of 67.8 mm
    assertEquals(36 * Math.PI / 4 * 0.0678 * 0.0678, choice.get("holdUpM3").doubleValue(), 1e-12);
  }

  @Test
  void fittingsWithAPriceCountInTheirSize() throws IOException {
    String text =
        Files.readString(Path.of(FALLS))
            .replaceFirst(
                "prices: \\{pipe: \\{", "prices: {fittings: {elbow 90 2 in: 3.10 USD}, pipe: {")
            .replace("pumps/", Path.of("..", "examples", "twin-falls").toAbsolutePath() + "/pumps/")
            .replaceFirst(
                "(?s)(  supply:.*?parts:\n)", "$1      - fitting: {type: elbow 90, count: 3}\n");
    String file = Files.writeString(folder.resolve("falls.yaml"), text).toString();

    JsonNode with = json("pipes", file, "--line", "supply", "--sizes", "2 in, 3 in");
    JsonNode without = json("pipes", FALLS, "--line", "supply", "--sizes", "2 in, 3 in");

    assertEquals(9.30, cost(with, "2 in") - cost(without, "2 in"), 1e-9);
    assertEquals(0, cost(with, "3 in") - cost(without, "3 in"), 1e-9);
  }

  private static double cost(JsonNode answer, String size) {
    for (JsonNode choice : answer.get("choices")) {
      if (choice.get("sizes").get("supply").stringValue().equals(size)) {
        return choice.get("materialCost").doubleValue();
      }
    }
    throw new AssertionError(size + " is not among the choices");
  }

  @Test
  void withOneAndTheSamePumpItSaysThatLargerPipeBuysFlowAndNotMoney() {
    Run run =
        Run.of("pipes", PROJECT, "--line", "supply", "--sizes", "50 mm, 63 mm", "--set", STRONGER);

    assertTrue(run.out().contains("larger pipe buys flow and not money"), run.out());
    assertFalse(run.out().contains("in year"), run.out());
    assertTrue(run.out().contains("Changed for this answer: " + STRONGER));
  }

  @Test
  void jointDecisionGivesEachSizeItsOwnCheapestPump() {
    String sizes = "50 mm, 63 mm, 75 mm, 90 mm";
    JsonNode answer =
        json("pipes", PROJECT, "--line", "supply", "--sizes", sizes, "--from", SUPPLIER);

    for (JsonNode choice : answer.get("choices")) {
      String size = choice.get("sizes").get("supply").stringValue();
      JsonNode best =
          json("pumps", PROJECT, "--from", SUPPLIER, "--set", "lines.supply.pipe.size=" + size)
              .get("candidates")
              .get(0);
      for (String figure : List.of("model", "speed", "energyPerYear", "price", "verdict")) {
        assertEquals(best.get(figure), choice.get(figure), size + " " + figure);
      }
      assertEquals(
          best.get("costOverYears").doubleValue() + choice.get("materialCost").doubleValue(),
          choice.get("costOverYears").doubleValue(),
          1e-9);
    }
    assertEquals(
        answer.get("choices").get(0).get("sizes").toString(), answer.get("leastCost").toString());
  }

  @Test
  void linesTogetherTakeOneSizeAndEachFreelyAllCombinations() {
    String[] lines = {
      "pipes", FALLS, "--line", "supply", "--line", "high", "--sizes", "2 in, 3 in"
    };
    String[] free = Arrays.copyOf(lines, lines.length + 1);
    free[lines.length] = "--each";

    assertEquals(2, json(lines).get("choices").size());
    assertEquals(4, json(free).get("choices").size());
    for (JsonNode choice : json(lines).get("choices")) {
      assertEquals(choice.get("sizes").get("supply"), choice.get("sizes").get("high"));
    }
  }

  @Test
  void pumpStillToBeChosenNeedsAFolder() throws IOException {
    String planned =
        Files.readString(Path.of(PROJECT))
            .replace("pump: dipper 180", "pump: to be chosen")
            .replaceAll("(?s)pumps:.*?streams:", "streams:");
    String file = Files.writeString(folder.resolve("pond.yaml"), planned).toString();

    assertRefused(Run.of("pipes", file, "--line", "supply", "--sizes", "63 mm"), "--from FOLDER");
    assertEquals(
        1,
        json("pipes", file, "--line", "supply", "--sizes", "63 mm", "--from", SUPPLIER)
            .get("choices")
            .size());
  }

  @Test
  void linesAndSizesThatAreNotThereAreToldWithWhatIs() {
    assertRefused(
        Run.of("pipes", PROJECT, "--line", "suply", "--sizes", "63 mm"),
        "no line is called \"suply\"",
        "did you mean \"supply\"?");
    assertRefused(
        Run.of("pipes", PROJECT, "--line", "supply", "--sizes", "63 mm, 64 mm"),
        "\"64 mm\" is not a size of PVC-U PN 10");
    assertRefused(
        Run.of("pipes", PROJECT, "--line", "supply", "--sizes", ""), "\"\" is not a size");
    assertRefused(
        Run.of("pipes", PROJECT, "--line", "intake", "--sizes", "63 mm"),
        "line \"intake\" has no run of pipe");
    assertRefused(Run.of("pipes", PROJECT, "--sizes", "63 mm"), "--line");
    assertRefused(Run.of("pipes", PROJECT, "--line", "supply"), "--sizes");
  }

  @Test
  void runsWithSizesOfTheirOwnAreTold() throws IOException {
    String text =
        Files.readString(Path.of(PROJECT))
            .replace("- run: 36 m", "- run: {length: 36 m, size: 63 mm}")
            .replaceAll("- (fitting|check valve|valve): \\{k", "- $1: {size: 63 mm, k")
            .replace("- gauge: {", "- gauge: {size: 63 mm, ")
            .replaceAll("pumps/", EXAMPLE.toAbsolutePath() + "/pumps/")
            .replace("entrance: {k: 0.5}", "entrance: {k: 0}\n    exit: {k: 0}");
    String file = Files.writeString(folder.resolve("pond.yaml"), text).toString();

    Run run = Run.of("pipes", file, "--line", "supply", "--sizes", "63 mm, 75 mm");

    assertRefused(run, "nothing in it changes with the size");
  }

  /**
   * A pond at 0 m, a straight pump curve H = 6 − 1000 Q (m, m³/s), 50 m of pipe with Darcy factor
   * 0.02 and no end losses, an outlet in air at 2 m: 6 − sQ = 2 + cQ², c = f L/(D 2g A²), so Q =
   * (−s + √(s² + 16c))/2c.
   */
  private String textbook(String pipe, String run) throws IOException {
    String text =
        """
        rillwright: 1
        show: metric
        points:
          pond: {kind: basin, level: 0 m}
          top: {kind: outlet, elevation: 2 m, want: 1 L/s}
        lines:
          up:
            from: pond
            to: top
            PIPE
            exit: {k: 0}
            parts: [{pump: straight}, {run: RUN}]
        pumps:
          straight: {points: [{flow: 0 L/s, head: 6 m}, {flow: 6 L/s, head: 0 m}]}
        """;
    return Files.writeString(
            folder.resolve("book.yaml"), text.replace("PIPE", pipe).replace("RUN", run))
        .toString();
  }

  @Test
  void flowThroughPipeOfAFixedFactorIsTheClosedForm() throws IOException {
    String file = textbook("pipe: {inside: 40 mm, factor: 0.02}", "50 m");

    JsonNode answer = json("pipes", file, "--line", "up", "--sizes", "32 mm, 50 mm");

    assertEquals(2, answer.get("choices").size());
    for (JsonNode choice : answer.get("choices")) {
      double bore = choice.get("sizes").get("up").stringValue().equals("32 mm") ? 0.032 : 0.05;
      double area = Math.PI / 4 * bore * bore;
      double c = 0.02 * 50 / bore / (2 * 9.80665 * area * area);
      double flow = (-1000 + Math.sqrt(1e6 + 16 * c)) / (2 * c);
      JsonNode line = choice.get("lines").get("up");
      assertEquals(flow, choice.get("fallsM3PerS").get("top").doubleValue(), 1e-12);
      assertEquals(6 - 1000 * flow, choice.get("operating").get("headM").doubleValue(), 1e-9);
      assertEquals(flow / area, line.get("velocityMPerS").doubleValue(), 1e-9);
      assertEquals(c * flow * flow / 50, line.get("frictionMPerM").doubleValue(), 1e-10);
      assertEquals(50 * area, choice.get("holdUpM3").doubleValue(), 1e-15);
      assertTrue(choice.get("costOverYears").isNull(), "no watts, no price");
    }
    assertRefused(Run.of("pipes", file, "--line", "up", "--sizes", "2"), "has no unit", "--sizes");
  }

  @Test
  void runsThatNameTheirOwnMaterialTakeTheSizes() throws IOException {
    String file = textbook("", "{length: 50 m, material: flexible PVC, size: 2 in}");

    JsonNode answer = json("pipes", file, "--line", "up", "--sizes", "1-1/2 in, 3 in");

    double narrow = flowOf(answer, "1-1/2 in");
    assertTrue(narrow < flowOf(answer, "3 in"), answer.toString());
  }

  private static double flowOf(JsonNode answer, String size) {
    for (JsonNode choice : answer.get("choices")) {
      if (choice.get("sizes").get("up").stringValue().equals(size)) {
        return choice.get("operating").get("flowM3PerS").doubleValue();
      }
    }
    throw new AssertionError(size + " is not among the choices");
  }

  @Test
  void pictureHasEverySizeUnderThePump() throws IOException {
    Path picture = folder.resolve("pipes.svg");

    Run run =
        Run.of(
            "pipes",
            PROJECT,
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
    for (String name : List.of("50 mm", "63 mm", "90 mm", "dipper 400")) {
      assertTrue(svg.contains(name), name);
    }
  }
}
