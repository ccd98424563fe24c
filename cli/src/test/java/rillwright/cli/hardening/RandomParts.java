package rillwright.cli.hardening;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Parts of lines and ends of them, drawn: each a map as a project file writes it. */
final class RandomParts {
  private final Draw draw;
  private int gauges;

  RandomParts(Draw draw) {
    this.draw = draw;
  }

  /** A pipe: of a catalogue size, a thin hose, or a plain bore. */
  Map<String, Object> pipe() {
    return switch (draw.below(5)) {
      case 0 ->
          ProjectTree.map("material", "PVC-U PN 10", "size", draw.oneOf(List.of("40 mm", "63 mm")));
      case 1 ->
          ProjectTree.map("material", "flexible PVC", "size", draw.oneOf(List.of("1 in", "3 in")));
      case 2 ->
          ProjectTree.map(
              "inside", Draw.quantity(draw.logUniform(3, 15), "mm"), "roughness", "0.01 mm");
      default ->
          ProjectTree.map(
              "inside", Draw.quantity(draw.logUniform(15, 120), "mm"), "roughness", "0.002 mm");
    };
  }

  /** What follows a line's beginning, a run of pipe among it. */
  List<Map<String, Object>> rest() {
    List<Map<String, Object>> parts = new ArrayList<>();
    int more = draw.below(4);
    for (int i = 0; i < more; i++) {
      parts.add(any());
    }
    parts.add(draw.below(parts.size() + 1), ProjectTree.map("run", length()));
    return parts;
  }

  /** A length, at times uncertain. */
  private String length() {
    String length = draw.metres(1, 40);
    return draw.chance(0.2) ? length + " ± 40 cm" : length;
  }

  private Map<String, Object> any() {
    return switch (draw.below(11)) {
      case 0 -> ProjectTree.map("check valve", ProjectTree.map("type", "swing"));
      case 1 ->
          ProjectTree.map(
              "check valve", ProjectTree.map("k", draw.uniform(0.5, 4), "cracking head", "2 cm"));
      case 2 -> ProjectTree.map("valve", ballValve());
      case 3 ->
          ProjectTree.map(
              "valve", ProjectTree.map("k", draw.logUniform(0.1, 1000), "adjustable", "yes"));
      case 4 -> ProjectTree.map("filter", filter());
      case 5 -> ProjectTree.map("loss", ProjectTree.map("k", draw.uniform(0, 5)));
      case 6 -> ProjectTree.map("high point", draw.metres(-0.5, 3));
      case 7 ->
          ProjectTree.map(
              "gauge", ProjectTree.map("name", "G" + gauges++, "elevation", draw.metres(-0.5, 1)));
      default ->
          ProjectTree.map(
              "fitting", ProjectTree.map("type", "elbow 90", "count", 1 + draw.below(5)));
    };
  }

  private Map<String, Object> ballValve() {
    String open = draw.chance(0.1) ? "0 %" : draw.percent(15, 100);
    return draw.chance(0.5)
        ? ProjectTree.map("type", "ball", "open", open, "adjustable", "yes")
        : ProjectTree.map("type", "ball", "open", open);
  }

  private Map<String, Object> filter() {
    Map<String, Object> rating =
        ProjectTree.map("flow", "6 m3/h", "head", draw.metres(0.01, 0.8), "exponent", 1.8);
    return draw.chance(0.3)
        ? ProjectTree.map("rating", rating, "clogged", "5 % .. 40 %", "open top", "30 cm")
        : ProjectTree.map("rating", rating);
  }

  /** A skimmer's mouth. */
  Map<String, Object> skimmer() {
    return ProjectTree.map(
        "skimmer",
        ProjectTree.map(
            "width", draw.metres(0.1, 0.6),
            "height", "18 cm",
            "sill", draw.metres(-0.2, -0.05),
            "clogged", draw.oneOf(List.of("0 %", "10 % .. 40 %"))));
  }

  /** A data sheet of three points. */
  Map<String, Object> sheet() {
    double most = draw.logUniform(1, 40);
    double head = draw.uniform(1, 12);
    return ProjectTree.map(
        "points",
        List.of(
            sheetPoint(0, head, 40 + 8 * most),
            sheetPoint(most / 2, head * 0.8, 40 + 12 * most),
            sheetPoint(most, head * 0.1, 40 + 14 * most)));
  }

  private static Map<String, Object> sheetPoint(double flow, double head, double watts) {
    return ProjectTree.map(
        "flow", Draw.quantity(flow, "m3/h"),
        "head", Draw.quantity(head, "m"),
        "power", Draw.quantity(watts, "W"));
  }
}
