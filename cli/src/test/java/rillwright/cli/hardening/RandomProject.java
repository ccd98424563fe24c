package rillwright.cli.hardening;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A valid project that a seed draws, as the maps and lists that its file writes: trees and loops,
 * one pump, several or none, water held uphill, falls and outlets with and without a target, one or
 * two chambers, thin hoses, shut valves, draws, uncertain values, a stream, readings, conditions.
 * The same for the same seed. All of it is invented.
 */
final class RandomProject {
  private final Draw draw;
  private final RandomParts random;
  private final Map<String, Object> points = new LinkedHashMap<>();
  private final Map<String, Object> lines = new LinkedHashMap<>();
  private final Map<String, Object> pumps = new LinkedHashMap<>();
  private final List<String> falls = new ArrayList<>();

  private RandomProject(long seed) {
    this.draw = new Draw(seed);
    this.random = new RandomParts(draw);
  }

  /** The project of a seed. */
  static Map<String, Object> of(long seed) {
    RandomProject project = new RandomProject(seed);
    int tees = 1 + project.draw.below(project.draw.chance(0.1) ? 12 : 4);
    return project.build(seed, tees, 0);
  }

  /** A larger one, of up to 40 lines. */
  static Map<String, Object> large(long seed) {
    RandomProject project = new RandomProject(seed);
    return project.build(seed, 15 + project.draw.below(15), 0);
  }

  /** One of about 30 lines, half of them in rings. */
  static Map<String, Object> mesh(long seed) {
    RandomProject project = new RandomProject(seed);
    return project.build(seed, 12, 14);
  }

  private Map<String, Object> build(long seed, int tees, int rings) {
    String start = openWater();
    boolean isPumped = draw.chance(0.85);
    for (int i = 0; i < tees; i++) {
      tee("tee " + i);
      join(i == 0 ? start : "tee " + draw.below(i), "tee " + i, i == 0 && isPumped);
    }
    int ends = 1 + draw.below(4);
    for (int i = 0; i < ends; i++) {
      String name = "end " + i;
      if (draw.chance(0.75)) {
        fall(name);
      } else {
        outlet(name);
      }
      join("tee " + draw.below(tees), name, false);
    }
    int extra = rings + (draw.chance(0.5) ? draw.below(3) : 0);
    List<String> names = List.copyOf(points.keySet());
    for (int i = 0; i < extra; i++) {
      String from = draw.oneOf(names);
      String to = draw.oneOf(names);
      if (!from.equals(to)) {
        join(from, to, rings == 0 && draw.chance(0.2));
      }
    }
    return whole(seed);
  }

  private Map<String, Object> whole(long seed) {
    Map<String, Object> whole = new LinkedHashMap<>();
    whole.put("rillwright", 1);
    whole.put("title", "Drawn by " + seed);
    whole.put("show", draw.oneOf(List.of("us", "metric")));
    whole.put("water", ProjectTree.map("temperature", Draw.quantity(draw.uniform(4, 28), "C")));
    whole.put(
        "running",
        ProjectTree.map("price", "0.2 USD/kWh", "hours", "24 h/day", "days", "300 days/year"));
    whole.put("points", points);
    whole.put("lines", lines);
    if (!pumps.isEmpty()) {
      whole.put("pumps", pumps);
    }
    if (!falls.isEmpty()) {
      if (draw.chance(0.5)) {
        whole.put("streams", ProjectTree.map("main", stream()));
      }
      if (draw.chance(0.5)) {
        whole.put("readings", List.of(reading()));
      }
    }
    if (draw.chance(0.4)) {
      whole.put(
          "conditions",
          ProjectTree.map(
              "low pond",
              ProjectTree.map(
                  "points", ProjectTree.map("pond", ProjectTree.map("level", "-8 cm")))));
    }
    return whole;
  }

  private Map<String, Object> reading() {
    String at = draw.oneOf(falls);
    return draw.chance(0.5)
        ? ProjectTree.map("at", at, "bucket", "10 L", "time", "9 s")
        : ProjectTree.map(
            "at", at, "flow", Draw.quantity(draw.uniform(0.2, 8), "m3/h"), "within", "8 %");
  }

  private Map<String, Object> stream() {
    Map<String, Object> reach =
        ProjectTree.map(
            "length", draw.metres(2, 12),
            "drop", draw.metres(0.05, 0.4),
            "width", "60 cm",
            "bed", draw.oneOf(List.of("cobble", "bare liner")));
    Map<String, Object> pool =
        ProjectTree.map(
            "pool", ProjectTree.map("area", "1.2 m2", "depth", "30 cm", "crest width", "50 cm"));
    return ProjectTree.map(
        "from", falls.get(0), "to", "pond", "reaches", List.of(reach, pool, reach));
  }

  /** The pond, at times with a tank uphill and chambers; gives where the first line begins. */
  private String openWater() {
    points.put(
        "pond",
        ProjectTree.map(
            "kind",
            "basin",
            "level",
            draw.metres(-0.05, 0.05),
            "area",
            Draw.quantity(draw.logUniform(2, 100), "m2"),
            "overflow",
            "5 cm"));
    if (draw.chance(0.25)) {
      points.put("tank", ProjectTree.map("kind", "basin", "level", draw.metres(-1, 4)));
    }
    if (draw.chance(0.5)) {
      return "pond";
    }
    chamber("chamber");
    lines.put(
        "intake",
        ProjectTree.map("from", "pond", "to", "chamber", "parts", List.of(random.skimmer())));
    if (draw.chance(0.8)) {
      return "chamber";
    }
    chamber("settling chamber");
    join("chamber", "settling chamber", false);
    return "settling chamber";
  }

  private void chamber(String name) {
    points.put(
        name,
        ProjectTree.map(
            "kind",
            "chamber",
            "floor",
            "-80 cm",
            "intake",
            draw.metres(-0.6, -0.3),
            "area",
            Draw.quantity(draw.logUniform(0.02, 2), "m2")));
  }

  private void tee(String name) {
    Map<String, Object> tee = new LinkedHashMap<>();
    tee.put("kind", "tee");
    tee.put("elevation", draw.metres(-0.5, 2));
    if (draw.chance(0.08)) {
      tee.put("draw", Draw.quantity(draw.logUniform(10, 2000), "L/h"));
    }
    points.put(name, tee);
  }

  private void fall(String name) {
    Map<String, Object> fall = new LinkedHashMap<>();
    fall.put("kind", "fall");
    fall.put("crest", draw.metres(0.2, 3));
    switch (draw.below(4)) {
      case 0 -> fall.put("weir", ProjectTree.map("shape", "v notch", "angle", 90));
      case 1 -> {
        fall.put("width", draw.metres(0.2, 1));
        fall.put("weir", ProjectTree.map("shape", "thin plate", "height", "20 cm"));
      }
      default -> {
        fall.put("width", draw.metres(0.2, 1));
        fall.put("lip", draw.oneOf(List.of("stone", "metal")));
      }
    }
    target(fall, 0.7);
    points.put(name, fall);
    falls.add(name);
  }

  private void outlet(String name) {
    Map<String, Object> outlet = new LinkedHashMap<>();
    outlet.put("kind", "outlet");
    double elevation = draw.uniform(-0.3, 2);
    outlet.put("elevation", Draw.quantity(elevation, "m"));
    if (draw.chance(0.3)) {
      outlet.put("level", Draw.quantity(elevation + draw.uniform(0, 0.6), "m"));
    } else if (draw.chance(0.4)) {
      outlet.put("nozzle", ProjectTree.map("diameter", "12 mm", "discharge coefficient", 0.95));
    }
    target(outlet, 0.4);
    points.put(name, outlet);
  }

  private void target(Map<String, Object> end, double chance) {
    if (draw.chance(chance)) {
      end.put("target", Draw.quantity(draw.logUniform(0.2, 15), "m3/h"));
    }
  }

  private void join(String from, String to, boolean isPumped) {
    List<Object> parts = new ArrayList<>(random.rest());
    if (isPumped || draw.chance(0.08)) {
      String pump = "pump " + pumps.size();
      pumps.put(pump, random.sheet());
      int at = draw.chance(0.8) ? 0 : draw.below(parts.size() + 1);
      parts.add(at, ProjectTree.map("pump", pump));
    }
    lines.put(
        "line " + lines.size(),
        ProjectTree.map("from", from, "to", to, "pipe", random.pipe(), "parts", parts));
  }
}
