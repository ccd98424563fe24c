package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * What {@code duty} asks for with the others throttled, put in as a pump, gives every target once
 * {@code balance} has set the valves; on drawn projects with one pump, a valve before each target.
 * {@code -Drillwright.projects=1000} tries that many.
 *
 * <p>Left out is what {@code balance} does not promise: a line that leads on from a fall takes its
 * water elsewhere; and where several lines climb over high points, or a draw waits for one, it
 * depends on the valves which of them start.
 */
class PutBackTest {
  private static final int PROJECTS = Integer.getInteger("rillwright.projects", 60);

  /** What valves set by a balance bring, a share of a target. */
  private static final double SET = 1e-4;

  private static final double MOST_HEAD_M = 900;

  @TempDir private Path folder;

  @Test
  void aPumpThatMakesTheThrottledDutyBringsEveryTarget() {
    List<String> wrong = new ArrayList<>();
    int asked = 0;
    for (long seed = 0; seed < PROJECTS; seed++) {
      Map<String, Object> tree = RandomProject.of(seed);
      List<String> pumped = ProjectTree.linesWith("pump", tree);
      if (pumped.size() != 1 || leadsOnFromAFall(tree) || startsEitherWay(tree)) {
        continue;
      }
      addValves(tree);
      String file = Scratch.file(folder, ProjectTree.yaml(tree));
      MeasuredRun duty = MeasuredRun.of("duty", file, "--format", "json");
      JsonNode throttled = duty.status() == 0 ? duty.json().get("throttled") : null;
      if (throttled == null || throttled.isNull() || !asks(throttled)) {
        continue;
      }
      makePump(tree, throttled.get("flowM3PerS").asDouble(), throttled.get("headM").asDouble());
      String made = Scratch.file(folder, ProjectTree.yaml(tree));
      asked++;
      MeasuredRun balance = MeasuredRun.of("balance", made, "--target", "--format", "json");
      if (balance.status() != 0) {
        wrong.add("seed " + seed + ": " + balance.err());
        continue;
      }
      JsonNode falls = balance.json().get("falls");
      for (String fall : falls.propertyNames()) {
        JsonNode target = falls.get(fall).get("targetM3PerS");
        double flow = falls.get(fall).get("flowM3PerS").asDouble();
        if (!target.isNull() && Math.abs(flow / target.asDouble() - 1) > SET) {
          wrong.add("seed " + seed + ": " + fall + " gets " + flow + " of " + target);
        }
      }
    }
    assertEquals(List.of(), wrong, () -> String.join("\n", wrong));
    assertTrue(asked > PROJECTS / 30, asked + " asked");
  }

  /** Through a hose more head may be asked than a file may say. */
  private static boolean asks(JsonNode duty) {
    double headM = duty.get("headM").asDouble();
    return duty.get("flowM3PerS").asDouble() > 1e-6 && headM > 1e-3 && headM < MOST_HEAD_M;
  }

  private static boolean leadsOnFromAFall(Map<String, Object> tree) {
    return tree.get("lines").toString().contains("from=end");
  }

  private static boolean startsEitherWay(Map<String, Object> tree) {
    int climbing = ProjectTree.linesWith("high point", tree).size();
    boolean isDrawn = tree.get("points").toString().contains("draw=");
    return climbing > (isDrawn ? 0 : 1);
  }

  /** An adjustable valve in every line to a way out. */
  @SuppressWarnings("unchecked")
  private static void addValves(Map<String, Object> tree) {
    for (Map<String, Object> line :
        ((Map<String, Map<String, Object>>) tree.get("lines")).values()) {
      if (line.get("to").toString().startsWith("end")) {
        List<Object> parts = new ArrayList<>((List<Object>) line.get("parts"));
        parts.add(ProjectTree.map("valve", ProjectTree.map("k", 1e-6, "adjustable", "yes")));
        line.put("parts", parts);
      }
    }
  }

  /** A curve through the flow and head. */
  private static void makePump(Map<String, Object> tree, double flowM3PerS, double headM) {
    List<Object> points =
        List.of(point(0, headM + 1), point(flowM3PerS, headM), point(2 * flowM3PerS, headM / 2));
    @SuppressWarnings("unchecked")
    Map<String, Object> pumps = (Map<String, Object>) tree.get("pumps");
    pumps.replaceAll((name, pump) -> ProjectTree.map("points", points));
  }

  private static Map<String, Object> point(double flowM3PerS, double headM) {
    return ProjectTree.map(
        "flow", String.format(Locale.ROOT, "%.12g L/s", 1000 * flowM3PerS),
        "head", String.format(Locale.ROOT, "%.12g m", headM));
  }
}
