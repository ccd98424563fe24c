package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Sizes in a network whose flow has a closed form. */
class PipesTextbookTest {
  @TempDir private Path folder;

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
          top: {kind: outlet, elevation: 2 m, target: 1 L/s}
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

    JsonNode answer = Run.json("pipes", file, "--line", "up", "--sizes", "32 mm, 50 mm");

    assertEquals(2, answer.get("candidates").size());
    for (JsonNode choice : answer.get("candidates")) {
      double bore = choice.get("sizes").get("up").stringValue().equals("32 mm") ? 0.032 : 0.05;
      double area = Math.PI / 4 * bore * bore;
      double c = 0.02 * 50 / bore / (2 * 9.80665 * area * area);
      double flow = (-1000 + Math.sqrt(1e6 + 16 * c)) / (2 * c);
      JsonNode line = choice.get("lines").get("up");
      assertEquals(flow, choice.get("fallsM3PerS").get("top").doubleValue(), 1e-12);
      assertEquals(6 - 1000 * flow, choice.get("operatingPoint").get("headM").doubleValue(), 1e-9);
      assertEquals(flow / area, line.get("velocityMPerS").doubleValue(), 1e-9);
      assertEquals(c * flow * flow / 50, line.get("frictionMPerM").doubleValue(), 1e-10);
      assertEquals(50 * area, choice.get("holdUpM3").doubleValue(), 1e-15);
      assertTrue(choice.get("costOverYears").isNull(), "no watts, no price");
    }
    Run.of("pipes", file, "--line", "up", "--sizes", "2").assertRefused("has no unit", "--sizes");
  }

  @Test
  void runsThatNameTheirOwnMaterialTakeTheSizes() throws IOException {
    String file = textbook("", "{length: 50 m, material: flexible PVC, size: 2 in}");

    JsonNode answer = Run.json("pipes", file, "--line", "up", "--sizes", "1-1/2 in, 3 in");

    double narrow = flowOf(answer, "1-1/2 in");
    assertTrue(narrow < flowOf(answer, "3 in"), answer.toString());
  }

  private static double flowOf(JsonNode answer, String size) {
    for (JsonNode choice : answer.get("candidates")) {
      if (choice.get("sizes").get("up").stringValue().equals(size)) {
        return choice.get("operatingPoint").get("flowM3PerS").doubleValue();
      }
    }
    throw new AssertionError(size + " is not among the choices");
  }
}
