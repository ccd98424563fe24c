package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.command.Run;
import rillwright.cli.examples.ExampleFolders;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * The long section of any project is drawn, each part of each line once, and its heads and
 * pressures are those of {@code solve}. {@code -Drillwright.projects=1000} tries that many.
 */
class SectionAgreementTest {
  private static final int PROJECTS = Integer.getInteger("rillwright.projects", 8);
  private static final double SAME_M = 1e-9;
  private static final double SAME_PA = 1e-4;

  @TempDir private Path folder;

  static List<Path> examples() {
    return ExampleFolders.projects();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void anExampleIsDrawnWithTheFiguresOfSolve(Path example) throws IOException {
    assertTrue(agrees(example.toString(), example.toString()), "it balances");
  }

  @Test
  void soIsAnyProject() throws IOException {
    int balanced = 0;
    for (long seed = 0; seed < PROJECTS; seed++) {
      String file = Scratch.file(folder, ProjectTree.yaml(RandomProject.of(seed)));
      balanced += agrees(file, "seed " + seed) ? 1 : 0;
    }
    assertTrue(balanced > PROJECTS / 2, balanced + " of " + PROJECTS + " balance");
  }

  /** Draws a project; whether it has a balance, which the drawing then agrees with. */
  private boolean agrees(String file, String what) throws IOException {
    Path picture = folder.resolve("section.svg");
    Run run = Run.of("section", file, "--to", picture.toString(), "--shut-off", "--format", "json");
    assertEquals("", run.err(), what);
    assertTrue(Files.readString(picture).contains("</svg>"), what);
    Files.delete(picture);
    JsonNode section = new ObjectMapper().readTree(run.out());
    Run solve = Run.of("solve", file, "--format", "json");
    assertEquals(solve.status() == 2 ? 0 : solve.status(), run.status(), what);
    boolean converged = section.get("converged").asBoolean();
    assertEquals(solve.status() == 0, converged, what);
    if (converged) {
      assertAgree(section, new ObjectMapper().readTree(solve.out()), what);
    } else {
      assertEquals(run.status() == 3, !section.get("noBalance").isNull(), what);
    }
    return converged;
  }

  private static void assertAgree(JsonNode section, JsonNode solved, String what) {
    int parts = 0;
    for (JsonNode way : section.get("ways")) {
      for (JsonNode place : way.get("places")) {
        if (!place.get("line").isNull()) {
          parts++;
        } else if (solved.get("points").has(place.get("name").asString(""))) {
          assertPoint(place, solved.get("points").get(place.get("name").asString()), what);
        }
      }
      assertLines(way, solved, what);
    }
    int expected = 0;
    for (JsonNode line : solved.get("lines")) {
      expected += realParts(line).size();
    }
    assertEquals(expected, parts, what);
  }

  /** What water enters a point with is its head; a starved chamber is drawn from farther below. */
  private static void assertPoint(JsonNode place, JsonNode point, String what) {
    String at = what + ", " + place.get("name");
    JsonNode before = place.get("before").get("headM");
    assertEquals(point.get("headM").isNull(), before.isNull(), at);
    if (!before.isNull() && !point.has("missingHeadM")) {
      assertEquals(point.get("headM").asDouble(), before.asDouble(), SAME_M, at);
      assertEquals(before.asDouble(), place.get("after").get("headM").asDouble(), SAME_M, at);
    }
  }

  private static void assertLines(JsonNode way, JsonNode solved, String what) {
    List<JsonNode> inLine = new ArrayList<>();
    for (JsonNode place : way.get("places")) {
      boolean goesOn = inLine.isEmpty() || inLine.get(0).get("line").equals(place.get("line"));
      if (place.get("line").isNull() || !goesOn) {
        assertLine(inLine, solved, what);
        inLine.clear();
      }
      if (!place.get("line").isNull()) {
        inLine.add(place);
      }
    }
    assertLine(inLine, solved, what);
  }

  private static void assertLine(List<JsonNode> places, JsonNode solved, String what) {
    if (places.isEmpty()) {
      return;
    }
    JsonNode line = solved.get("lines").get(places.get(0).get("line").asString());
    List<JsonNode> parts = realParts(line);
    double flow = line.get("flowM3PerS").asDouble();
    assertEquals(parts.size(), places.size(), what);
    for (int i = 0; i < parts.size(); i++) {
      JsonNode part = parts.get(flow < 0 ? parts.size() - 1 - i : i);
      JsonNode place = places.get(i);
      String at = what + ", " + place.get("line") + " " + i;
      assertEquals(part.get("part"), place.get("kind"), at);
      if (part.has("pressurePa") && !part.get("pressurePa").isNull()) {
        double pressure = place.get("before").get("pressurePa").asDouble();
        assertEquals(part.get("pressurePa").asDouble(), pressure, SAME_PA, at);
      }
      if (place.get("before").get("headM").isNull()) {
        assertFalse(line.get("determined").asBoolean() && flow != 0 && isWhole(line), at);
        continue;
      }
      if (flow != 0 && part.has("headLossM") && !part.get("headLossM").isNull()) {
        assertEquals(
            Math.signum(flow) * part.get("headLossM").asDouble(), taken(place), SAME_M, at);
      }
      if (flow > 0 && part.get("part").asString().equals("pump")) {
        assertEquals(part.get("headM").asDouble(), -taken(place), SAME_M, at);
      }
    }
  }

  /** Whether water runs full in all of a line: what falls beside air has no head. */
  private static boolean isWhole(JsonNode line) {
    for (JsonNode part : line.get("parts")) {
      if (part.has("headLossM") && part.get("headLossM").isNull()) {
        return false;
      }
    }
    return true;
  }

  private static double taken(JsonNode place) {
    JsonNode before = place.get("before").get("headM");
    JsonNode after = place.get("after").get("headM");
    assertFalse(before.isNull() || after.isNull(), place::toString);
    return before.asDouble() - after.asDouble();
  }

  private static List<JsonNode> realParts(JsonNode line) {
    List<JsonNode> parts = new ArrayList<>();
    for (JsonNode part : line.get("parts")) {
      String kind = part.get("part").asString();
      if (!List.of("entrance", "exit", "change of bore").contains(kind)) {
        parts.add(part);
      }
    }
    return parts;
  }

  @Test
  void anotherLossIsAnotherDrawing() {
    Path file = Path.of("..", "examples", "twin-falls", "falls.yaml");
    String drawn = Run.of("section", file.toString(), "--format", "json").out();
    String other =
        Run.of("section", file.toString(), "--format", "json", "--set", "lines.high.pipe.size=2 in")
            .out();
    assertNotEquals(drawn, other);
  }
}
