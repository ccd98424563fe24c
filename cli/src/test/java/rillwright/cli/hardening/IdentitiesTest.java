package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * What must be one and the same answer, on small random projects and some of each {@link Family};
 * {@code -Drillwright.projects=1000} tries that many, and fifty of each family.
 */
class IdentitiesTest {
  private static final int PROJECTS = Integer.getInteger("rillwright.projects", 12);

  private static final int OF_EACH = Math.max(1, PROJECTS / 20);

  /** What a balance is exact to, m³/s and a share of the largest flow. */
  private static final double EXACT = 1e-8;

  @TempDir private Path folder;

  private MeasuredRun solve(Map<String, Object> tree, String... more) {
    List<String> words = new ArrayList<>(List.of("solve"));
    words.add(Scratch.file(folder, ProjectTree.yaml(tree)));
    words.addAll(List.of("--format", "json"));
    words.addAll(List.of(more));
    return MeasuredRun.of(words.toArray(String[]::new));
  }

  @Test
  void yamlIsJsonAndASecondRunTellsTheSame() {
    for (Map<String, Object> tree : Family.drawn(PROJECTS, OF_EACH)) {
      MeasuredRun first = solve(tree);
      MeasuredRun second = solve(tree);
      String json = Scratch.file(folder, "pond.json", ProjectTree.json(tree));
      MeasuredRun fromJson = MeasuredRun.of("solve", json, "--format", "json");
      assertEquals(first.out(), second.out(), drawn(tree));
      assertEquals(first.out(), fromJson.out(), drawn(tree));
      assertEquals(first.status(), fromJson.status(), drawn(tree));
    }
  }

  @Test
  void aSettingIsAnEdit() {
    for (Map<String, Object> tree : Family.drawn(PROJECTS, OF_EACH)) {
      MeasuredRun set = solve(tree, "--set", "points.pond.level=-8 cm");
      map(map(tree.get("points")).get("pond")).put("level", "-8 cm");
      MeasuredRun written = solve(tree);
      assertEquals(written.status(), set.status(), drawn(tree));
      if (written.status() == 0) {
        assertEquals(written.json().get("points"), set.json().get("points"), drawn(tree));
        assertEquals(written.json().get("lines"), set.json().get("lines"), drawn(tree));
      }
    }
  }

  @Test
  void theOrderOfLinesAndPointsChangesNoFlow() {
    for (Map<String, Object> tree : Family.drawn(PROJECTS, OF_EACH)) {
      MeasuredRun written = solve(tree);
      ProjectTree.reverse(tree);
      MeasuredRun reordered = solve(tree);
      assertEquals(written.status(), reordered.status(), drawn(tree));
      if (written.status() == 0) {
        assertSameFlows(written.json().get("lines"), reordered.json().get("lines"), drawn(tree));
      }
    }
  }

  @Test
  void theOrderOfLinesAndPointsChangesNoDuty() {
    for (Map<String, Object> tree : Family.drawn(PROJECTS, OF_EACH)) {
      MeasuredRun written = duty(tree);
      ProjectTree.reverse(tree);
      MeasuredRun turned = duty(tree);
      assertEquals(written.status(), turned.status(), drawn(tree));
      if (written.status() == 0 && !written.json().get("throttled").isNull()) {
        double head = written.json().get("throttled").get("headM").asDouble();
        double other = turned.json().get("throttled").get("headM").asDouble();
        assertEquals(head, other, 1e-6, drawn(tree));
      }
    }
  }

  private MeasuredRun duty(Map<String, Object> tree) {
    String file = Scratch.file(folder, ProjectTree.yaml(tree));
    return MeasuredRun.of("duty", file, "--format", "json");
  }

  private static String drawn(Map<String, Object> tree) {
    return tree.get("title") + ", " + map(tree.get("lines")).size() + " lines";
  }

  private static void assertSameFlows(JsonNode lines, JsonNode others, String drawn) {
    double largest = 1e-6;
    for (String name : lines.propertyNames()) {
      largest = Math.max(largest, Math.abs(flow(lines, name)));
    }
    for (String name : lines.propertyNames()) {
      assertEquals(flow(lines, name), flow(others, name), EXACT * largest, drawn + ", " + name);
    }
  }

  private static double flow(JsonNode lines, String name) {
    return lines.get(name).get("flowM3PerS").asDouble();
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> map(Object section) {
    return (Map<String, Object>) section;
  }
}
