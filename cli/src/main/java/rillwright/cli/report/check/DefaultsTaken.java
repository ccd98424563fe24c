package rillwright.cli.report.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rillwright.cli.file.Project;
import rillwright.cli.file.site.Running;
import rillwright.cli.file.tree.MapNode;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Network;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.water.Water;

/** What was taken where a file says nothing. */
final class DefaultsTaken {
  private final Project project;
  private final List<String> notes = new ArrayList<>();

  private DefaultsTaken(Project project) {
    this.project = project;
  }

  /** Sentences, one for each default that was taken and matters. */
  static List<String> in(Project project) {
    DefaultsTaken taken = new DefaultsTaken(project);
    taken.water();
    taken.points();
    Network network = project.network();
    if (network.isPumped() || !network.placed(PlannedPump.class).isEmpty()) {
      taken.running();
    }
    return taken.notes;
  }

  private void water() {
    if (project.tree().find("water").isEmpty()) {
      notes.add(
          "the water is taken at "
              + (int) Water.USUAL_TEMPERATURE_C
              + " C (68 F); write \"water: {temperature: ...}\" for cold water, which takes a"
              + " little"
              + " more head");
    }
    if (project.tree().find("site").isEmpty()) {
      notes.add("the site is taken at sea level; this matters only where water is under suction");
    }
  }

  private void points() {
    List<Point> points = project.network().points();
    List<String> stone = new ArrayList<>();
    List<String> noTarget = new ArrayList<>();
    List<String> floor = new ArrayList<>();
    for (Point point : points) {
      String name = quoted(point.name());
      if (point instanceof Fall && !isWritten(point.name(), "lip", "weir")) {
        stone.add(name);
      }
      if (point instanceof Fall && point.targetM3PerS().isEmpty()) {
        noTarget.add(name);
      }
      if (point instanceof Chamber && !isWritten(point.name(), "intake")) {
        floor.add(name);
      }
    }
    add(stone, "the crest is taken as stone; say \"lip: metal\" or \"lip: boulders\" if it is not");
    add(noTarget, "there is no target, so no shortfall can be found; write \"target\" in the file");
    add(floor, "the pump intake is taken at the floor; write \"intake\" in the file");
  }

  private void add(List<String> names, String sentence) {
    if (!names.isEmpty()) {
      notes.add(names.stream().collect(Collectors.joining(", ")) + ": " + sentence);
    }
  }

  private void running() {
    Running running = project.running();
    if (running.leavesTimesOpen()) {
      notes.add(
          "where \"running\" does not say otherwise, costs are those of 24 hours a day on 365 days"
              + " a year");
    }
    if (running.price().isEmpty()) {
      notes.add("no price of electricity is given, so no costs are shown");
    }
  }

  private boolean isWritten(PointName point, String... fields) {
    Optional<MapNode> written =
        project.tree().findMap("points").flatMap(points -> points.findMap(point.value()));
    for (String field : fields) {
      if (written.flatMap(node -> node.find(field)).isPresent()) {
        return true;
      }
    }
    return false;
  }

  private static String quoted(PointName name) {
    return '"' + name.value() + '"';
  }
}
