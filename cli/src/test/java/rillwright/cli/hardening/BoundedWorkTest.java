package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Networks on which a study once looked for more than there is to find. */
class BoundedWorkTest {
  private static final long MEGABYTES = 1_000_000;

  @TempDir private Path folder;

  /** A gauge in a hose of 4 mm reads thousands of deviations apart over the sizes of a leak. */
  @Test
  void readingsWithoutMeasureAreSampledToABound() {
    String project =
        Scratch.file(
            folder,
            """
            points:
              pond: {kind: basin, level: 0 m}
              tank: {kind: basin, level: 2 m}
              split: {kind: tee, elevation: 0 m}
              fall: {kind: fall, crest: 1 m, width: 0.5 m, target: 3 L/s}
            lines:
              supply: {from: pond, to: split, pipe: {inside: 75 mm, roughness: 0.01 mm},
                parts: [{pump: p}, {check valve: {k: 2}}, {run: 5 m}]}
              up: {from: split, to: fall, pipe: {inside: 50 mm, roughness: 0.01 mm},
                parts: [{run: 5 m}]}
              hose: {from: tank, to: split, pipe: {inside: 4 mm, roughness: 0.01 mm},
                parts: [{run: 20 m}, {gauge: {name: G1, elevation: 0 m}}, {run: 20 m}]}
            pumps:
              p: {points: [{flow: 0 L/s, head: 6 m}, {flow: 10 L/s, head: 0 m}]}
            readings:
              - {at: fall, flow: 3 L/s}
            """);
    MeasuredRun run = MeasuredRun.of("weak", project, "--format", "json");
    assertEquals("", run.err());
    assertTrue(run.allocatedBytes() < 3000 * MEGABYTES, run.allocatedBytes() + " bytes");
  }

  /** A chamber of a few square centimetres rises and falls within milliseconds. */
  @Test
  void levelsThatRaceAreGivenUpAndNamed() {
    String pond = "../examples/small-pond/pond.yaml";
    String small = "points.chamber.area=0.037735 ft2";
    MeasuredRun run = MeasuredRun.of("stream", pond, "--times", "--set", small);
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("the level of \"chamber\" changes too fast"), run.out());
    JsonNode course =
        MeasuredRun.of("stream", pond, "--times", "--set", small, "--format", "json")
            .json()
            .get("course");
    assertEquals("chamber", course.get("givenUp").get("point").asString());
    double timeS = course.get("givenUp").get("timeS").asDouble();
    JsonNode last = course.get("moments").get(course.get("moments").size() - 1);
    assertEquals(timeS, last.get("timeS").asDouble());
    assertTrue(timeS > 0, timeS + " s");
  }
}
