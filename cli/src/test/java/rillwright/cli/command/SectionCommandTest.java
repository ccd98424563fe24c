package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class SectionCommandTest {
  private static final String TANKS =
      """
      rillwright: 1
      title: Two tanks
      show: metric
      points:
        high: {kind: basin, level: 40 m, area: 20 m2}
        low: {kind: basin, level: 25 m, area: 20 m2}
        middle: {kind: tee, draw: 5 m3/h}
      lines:
        a: {from: high, to: middle, pipe: {inside: 80 mm, roughness: 0.01 mm}, parts: [run: 300 m]}
        b: {from: middle, to: low, pipe: {inside: 80 mm, roughness: 0.01 mm}, parts: [run: 90 m]}
      conditions:
        dry: {lines: {a: {run: {length: 600 m}}}}
      """;

  @TempDir private Path folder;

  private String tanks(String text) throws IOException {
    return Files.writeString(folder.resolve("tanks.yaml"), text).toString();
  }

  private static JsonNode read(Run run) {
    return new ObjectMapper().readTree(run.out());
  }

  @Test
  void drawsBesideTheFileAndNeverOverAPictureThatNobodyNamed() throws IOException {
    String file = tanks(TANKS);
    Run run = Run.of("section", file);
    assertEquals(0, run.status(), run.err());
    Path picture = folder.resolve("tanks-section.png");
    assertTrue(run.out().endsWith("Picture: " + picture + "\n"), run.out());
    assertTrue(Files.size(picture) > 0);
    Run.of("section", file).assertRefused("this file exists already; name the picture with --to");
  }

  /** A file without elevations is a sketch; so is any other if that is asked for. */
  @Test
  void aFileWithoutElevationsIsSketched() throws IOException {
    Path picture = folder.resolve("a.svg");
    assertEquals(0, Run.of("section", tanks(TANKS), "--to", picture.toString()).status());
    assertTrue(Files.readString(picture).contains("height not given"));
    String given = TANKS.replace("draw: 5 m3/h", "draw: 5 m3/h, elevation: 20 m");
    assertEquals(0, Run.of("section", tanks(given), "--to", picture.toString()).status());
    assertTrue(Files.readString(picture).contains("total head, running"));
    assertEquals(
        0, Run.of("section", tanks(given), "--sketch", "--to", picture.toString()).status());
    assertFalse(Files.readString(picture).contains("total head, running"));
  }

  @Test
  void aConditionIsDrawnByName() throws IOException {
    String file = tanks(TANKS);
    JsonNode dry = read(Run.of("section", file, "--condition", "dry", "--format", "json"));
    assertEquals("dry", dry.get("condition").asString());
    JsonNode run = dry.get("ways").get(0).get("places").get(1);
    assertEquals(600, run.get("after").get("distanceM").asDouble(), 1e-9);
    Run.of("section", file, "--condition", "dri", "--format", "json")
        .assertRefused("there is no condition \"dri\"; did you mean \"dry\"?");
  }

  /** What is built is drawn, and the exit status says that there is no balance. */
  @Test
  void withoutABalanceWhatIsBuiltIsDrawn() throws IOException {
    String shut = TANKS.replace("[run: 300 m]", "[run: 300 m, valve: {type: ball, open: 0 %}]");
    String file = tanks(shut.replace("[run: 90 m]", "[check valve: {k: 2}, run: 90 m]"));
    Path picture = folder.resolve("b.svg");
    Run run = Run.of("section", file, "--to", picture.toString());
    assertEquals(3, run.status(), run.err());
    assertEquals("", run.err());
    Run.assertReported(
        run.out(), "Drawn by the file, without head lines: no balance: \"middle\" draws");
    assertTrue(Files.readString(picture).contains("no balanced state exists"));
    JsonNode json = read(Run.of("section", file, "--format", "json"));
    assertFalse(json.get("converged").asBoolean());
    assertTrue(json.get("noBalance").asString().contains("middle"));
    assertTrue(json.get("ways").get(0).get("places").get(0).get("before").get("headM").isNull());
  }
}
