package rillwright.cli.file.condition;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rillwright.cli.file.Project;
import rillwright.cli.file.Show;
import rillwright.cli.file.change.Change;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.file.tree.MapNode;
import rillwright.curves.unit.Unit;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Line;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;

/**
 * Conditions that make sense for most ponds, for a project that names none. All their numbers are
 * common practice, no source. A condition that would change nothing is left out.
 */
final class OfferedConditions {
  /** What leaves clog before somebody comes, a share. */
  private static final double AUTUMN_CLOGGED = 0.4;

  /** Wall of a pipe with five years of slime or lime, m. */
  private static final double FOULED_ROUGHNESS_M = 1e-3;

  /** What five years of it take from the bore, the middle of 2 to 4 mm. */
  private static final double FOULED_BORE_M = 3e-3;

  private static final String FOULED_ROUGHNESS = "1 mm";
  private static final String FOULED_BORE = "3 mm";

  /** No friction law covers walls rougher than this share of the bore. */
  private static final double ROUGHEST = 0.05;

  /** What a few hot days without topping up take from a pond. */
  private static final double LOW_POND_INCHES = 2;

  private static final double LOW_POND_MILLIMETRES = 50;

  private final Project project;
  private final boolean metric;

  private OfferedConditions(Project project) {
    this.project = project;
    this.metric = project.show() == Show.METRIC;
  }

  /** The conditions for a project. */
  static List<Condition> of(Project project) {
    OfferedConditions offered = new OfferedConditions(project);
    List<Condition> conditions = new ArrayList<>();
    conditions.add(new Condition("clean", offered.clogged(0)));
    conditions.add(new Condition("autumn", offered.clogged(AUTUMN_CLOGGED)));
    conditions.add(new Condition("five years fouled", offered.fouled()));
    conditions.add(new Condition("cold water", offered.cold()));
    conditions.add(new Condition("low pond", offered.low()));
    conditions.removeIf(condition -> condition.changes().isEmpty());
    return conditions;
  }

  private static Change change(List<String> steps, String value) {
    return Change.of(steps, value, "a built-in condition");
  }

  /** All that clogs at a share: at 0 what is more, above 0 what is less. */
  private List<Change> clogged(double share) {
    return parts(
        (line, part) -> {
          double now = cloggedShare(part);
          boolean changes = share == 0 ? now > 0 : now >= 0 && now < share;
          String value = String.format(Locale.ROOT, "%.0f %%", 100 * share);
          return only(changes, new Field("clogged", value));
        });
  }

  /** Share that is clogged, 0 to 1; below 0 of what does not clog. */
  private static double cloggedShare(Part part) {
    if (part instanceof Skimmer skimmer) {
      return skimmer.clogged();
    }
    return part instanceof Filter filter ? filter.clogged() : -1;
  }

  /** Rougher walls, and less bore: of a line's pipe, of runs where it has none. */
  private List<Change> fouled() {
    List<Change> changes =
        new ArrayList<>(
            parts((line, part) -> only(isToFoul(part), new Field("roughness", FOULED_ROUGHNESS))));
    for (Line line : project.network().lines()) {
      if (hasPipe(line) && line.parts().stream().anyMatch(OfferedConditions::isToFoul)) {
        changes.add(change(List.of("lines", line.name().value(), "pipe", "deposit"), FOULED_BORE));
      }
    }
    changes.addAll(
        parts(
            (line, part) ->
                only(isToFoul(part) && !hasPipe(line), new Field("deposit", FOULED_BORE))));
    return changes;
  }

  private boolean hasPipe(Line line) {
    return project
        .tree()
        .findMap("lines")
        .flatMap(lines -> lines.findMap(line.name().value()))
        .flatMap(fields -> fields.findMap("pipe"))
        .isPresent();
  }

  private static boolean isToFoul(Part part) {
    return part instanceof Run run
        && run.friction() instanceof Friction.Roughness wall
        && wall.roughnessM() < FOULED_ROUGHNESS_M
        && FOULED_ROUGHNESS_M < ROUGHEST * (run.inside().diameterM() - FOULED_BORE_M);
  }

  private static Optional<Field> only(boolean isSo, Field field) {
    return isSo ? Optional.of(field) : Optional.empty();
  }

  private List<Change> cold() {
    boolean explicit =
        project
            .tree()
            .find("water")
            .filter(water -> water.value() instanceof MapNode)
            .map(water -> ((MapNode) water.value()).find("temperature").isEmpty())
            .orElse(false);
    return explicit
        ? List.of()
        : List.of(change(List.of("water", "temperature"), metric ? "2 C" : "36 F"));
  }

  /** Basins, and outlets that end under the water of one. */
  private List<Change> low() {
    List<Change> changes = new ArrayList<>();
    Set<Double> ponds = new HashSet<>();
    for (Point point : project.network().points()) {
      if (point instanceof Basin basin) {
        ponds.add(basin.levelM());
        changes.add(lower(basin, basin.levelM()));
      }
    }
    for (Point point : project.network().points()) {
      if (point instanceof Outlet outlet
          && outlet.levelM().isPresent()
          && ponds.contains(outlet.levelM().getAsDouble())) {
        changes.add(lower(outlet, outlet.levelM().getAsDouble()));
      }
    }
    return changes;
  }

  private Change lower(Point point, double levelM) {
    Unit unit = metric ? Unit.MILLIMETRE : Unit.INCH;
    double lower = metric ? LOW_POND_MILLIMETRES : LOW_POND_INCHES;
    BigDecimal level =
        BigDecimal.valueOf(unit.fromSi(levelM) - lower)
            .setScale(2, RoundingMode.HALF_EVEN)
            .stripTrailingZeros();
    return change(
        List.of("points", point.name().value(), "level"),
        level.toPlainString() + " " + unit.symbol());
  }

  /** A field of a part and what it becomes. */
  private record Field(String name, String value) {}

  private interface Alteration {
    Optional<Field> of(Line line, Part part);
  }

  /** The changes to parts of all lines, each addressed by its line and kind. */
  private List<Change> parts(Alteration alteration) {
    List<Change> changes = new ArrayList<>();
    for (Line line : project.network().lines()) {
      List<String> steps = PartStep.stepsOf(line.parts().stream().map(Part::kind).toList());
      for (int i = 0; i < steps.size(); i++) {
        String step = steps.get(i);
        alteration
            .of(line, line.parts().get(i))
            .map(
                field ->
                    change(
                        List.of("lines", line.name().value(), step, field.name()), field.value()))
            .ifPresent(changes::add);
      }
    }
    return changes;
  }
}
