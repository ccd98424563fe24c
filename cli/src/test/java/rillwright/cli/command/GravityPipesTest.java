package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Sizes of pipe where nothing is pumped, and which of several pumps is meant where one is. */
class GravityPipesTest {
  private static final String TROUGHS =
      Path.of("..", "examples", "header-pond", "troughs.yaml").toString();

  /**
   * 2 m of fall, 10 m of pipe of 50 mm with a fixed factor of 0.02, an entrance of 0.5 and the
   * jet's velocity head.
   */
  private static final String DOWNHILL =
      """
      rillwright: 1
      title: downhill
      show: metric
      points:
        header: {kind: basin, level: 2 m}
        spout: {kind: outlet, elevation: 0 m, target: 9 m3/h}
      lines:
        main:
          from: header
          to: spout
          pipe: {inside: 50 mm, factor: 0.02}
          parts:
            - run: 10 m
      """;

  private static final String TWO_PUMPS =
      """
      rillwright: 1
      title: two pumps
      show: metric
      points:
        pond: {kind: basin, level: 0 m}
        spout: {kind: outlet, elevation: 1 m, target: 9 m3/h}
        spray: {kind: outlet, elevation: 1 m, target: 5 m3/h}
      lines:
        first:
          from: pond
          to: spout
          pipe: {inside: 50 mm, factor: 0.02}
          parts: [{pump: small}, {run: 10 m}]
        second:
          from: pond
          to: spray
          pipe: {inside: 50 mm, factor: 0.02}
          parts: [{pump: small}, {run: 10 m}]
      pumps:
        small: {points: [{flow: 0 m3/h, head: 3 m}, {flow: 20 m3/h, head: 0 m}]}
      """;

  @TempDir private Path folder;

  private String file(String text) throws IOException {
    return Files.writeString(folder.resolve("pond.yaml"), text).toString();
  }

  @Test
  void flowThroughPipeOfAFixedFactorIsTheClosedForm() throws IOException {
    String file = file(DOWNHILL);

    JsonNode choices =
        Run.json("pipes", file, "--line", "main", "--sizes", "50 mm, 30 mm").get("candidates");

    for (int i = 0; i < 2; i++) {
      double d = i == 0 ? 0.05 : 0.03;
      double v = Math.sqrt(2 * 9.80665 * 2 / (0.5 + 1 + 0.02 * 10 / d));
      JsonNode choice = choices.get(i);
      assertEquals(
          v * Math.PI * d * d / 4,
          choice.get("fallsM3PerS").get("spout").doubleValue(),
          1e-12,
          "bore " + d);
      assertEquals(v, choice.get("lines").get("main").get("velocityMPerS").doubleValue(), 1e-9);
      assertEquals(i == 0, choice.get("meetsTargets").booleanValue());
      assertTrue(choice.get("model").isNull());
      assertEquals(0, choice.get("energyKwhPerYear").doubleValue());
    }
  }

  @Test
  void flowsOfASizeAreThoseOfSolveWithItInPlace() {
    JsonNode choices =
        Run.json("pipes", TROUGHS, "--line", "main", "--sizes", "2 in, 4 in").get("candidates");

    for (JsonNode choice : choices) {
      String size = choice.get("sizes").get("main").stringValue();
      JsonNode points =
          Run.json("solve", TROUGHS, "--set", "lines.main.pipe.size=" + size).get("points");
      for (String fall : new String[] {"near trough", "far trough"}) {
        assertEquals(
            points.get(fall).get("flowM3PerS").doubleValue(),
            choice.get("fallsM3PerS").get(fall).doubleValue(),
            1e-12);
      }
    }
  }

  @Test
  void pictureIsDrawnForOneSizeToo() {
    Path picture = folder.resolve("sizes.svg");

    Run run =
        Run.of(
            "pipes", TROUGHS, "--line", "main", "--sizes", "3 in", "--chart", picture.toString());

    assertEquals("", run.err());
    assertTrue(Files.exists(picture));
  }

  @Test
  void pumpsToChooseFromNeedAPlaceForOne() {
    Run run =
        Run.of(
            "pipes",
            TROUGHS,
            "--line",
            "main",
            "--sizes",
            "3 in",
            "--from",
            Path.of("..", "examples", "long-stream", "supplier").toString());

    assertEquals(2, run.status());
    assertTrue(run.err().contains("no line has a pump"), run.err());
  }

  @Test
  void ofSeveralPumpsTheOneInTheLineIsMeant() throws IOException {
    String file = file(TWO_PUMPS);

    JsonNode answer = Run.json("pipes", file, "--line", "second", "--sizes", "50 mm");

    assertEquals("second", answer.get("duty").get("line").stringValue());
  }
}
