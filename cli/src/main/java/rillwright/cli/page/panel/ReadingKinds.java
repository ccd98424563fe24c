package rillwright.cli.page.panel;

import java.util.LinkedHashMap;
import java.util.Map;
import rillwright.cli.file.Project;
import rillwright.cli.file.Show;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Line;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.network.Pump;

/** What can be read at a job, each as the file writes it up to its value. */
final class ReadingKinds {
  private final Map<String, String> kinds = new LinkedHashMap<>();

  private ReadingKinds() {}

  /** What can be read, in words, by the beginning of what the file says: "value" comes next. */
  static Map<String, String> of(Project project) {
    ReadingKinds found = new ReadingKinds();
    String bucket = project.show() == Show.US ? "5 gal" : "20 L";
    for (Point point : project.network().points()) {
      String name = point.name().value();
      if (point instanceof Fall || point instanceof Outlet) {
        found.put("at", name, ", bucket: " + bucket + ", time", "seconds to fill " + bucket);
        found.put("at", name, ", flow", "flow");
      }
      if (point instanceof Fall) {
        found.put("at", name, ", crest head", "depth over the crest, upstream of it");
        found.put("at", name, ", brink", "depth at the brink");
      }
      if (point instanceof Chamber) {
        found.put("at", name, ", level", "water level");
      }
    }
    project.network().lines().forEach(found::line);
    return found.kinds;
  }

  private void line(Line line) {
    String name = line.name().value();
    boolean pumped = line.parts().stream().anyMatch(Pump.class::isInstance);
    line.parts().stream()
        .filter(Gauge.class::isInstance)
        .map(part -> ((Gauge) part).name())
        .forEach(
            gauge -> {
              put("gauge", gauge, ", pressure", "pressure, running");
              put("gauge", gauge, ", when: pump off, pressure", "pressure, pump off");
              put(
                  "gauge",
                  gauge,
                  ", when: valve shut, valve: " + quoted(name) + ", pressure",
                  "pressure, valve of " + name + " shut for ten seconds");
            });
    if (pumped) {
      put("pump", name, ", power", "power of the pump");
    }
    put("line", name, ", flow", "flow by a meter");
  }

  private void put(String where, String name, String rest, String words) {
    kinds.put(where + ": " + quoted(name) + rest, name + ": " + words);
  }

  private static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
