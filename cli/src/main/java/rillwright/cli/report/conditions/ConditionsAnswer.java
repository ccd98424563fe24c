package rillwright.cli.report.conditions;

import java.util.Comparator;
import java.util.List;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.PointState;

/**
 * A project in several conditions.
 *
 * @param title of the job, as written
 * @param units to show it in
 * @param changes made on the command line, as written
 * @param network as written: it names the falls and their wishes
 * @param offered whether the conditions are offered, because the file names none
 * @param outcomes one for each condition, at least one
 */
public record ConditionsAnswer(
    String title,
    ShownUnits units,
    List<String> changes,
    Network network,
    boolean offered,
    List<Outcome> outcomes) {
  public ConditionsAnswer {
    changes = List.copyOf(changes);
    outcomes = List.copyOf(outcomes);
  }

  /** Falls and outlets, in the order of the file. */
  public List<Point> falls() {
    return network.points().stream()
        .filter(point -> point instanceof Fall || point instanceof Outlet)
        .toList();
  }

  /** Those of them with a wish. */
  public List<Point> wished() {
    return falls().stream().filter(fall -> fall.wantM3PerS().isPresent()).toList();
  }

  /** The condition in which a fall gets least of its wish; the first of several. */
  public Outcome worstFor(PointName fall) {
    return outcomes.stream()
        .min(Comparator.comparingDouble(outcome -> outcome.shareOfWish(fall)))
        .orElseThrow();
  }

  /** The one of some outcomes in which the falls get least; the first of several. */
  Outcome worstOf(List<Outcome> some) {
    return some.stream()
        .min(
            Comparator.comparingDouble(this::leastShareOfWish)
                .thenComparingDouble(this::flowM3PerS))
        .orElseThrow();
  }

  private double leastShareOfWish(Outcome outcome) {
    return wished().stream().mapToDouble(fall -> outcome.shareOfWish(fall.name())).min().orElse(0);
  }

  private double flowM3PerS(Outcome outcome) {
    return falls().stream()
        .flatMap(fall -> outcome.point(fall.name()).stream())
        .mapToDouble(PointState::outflowM3PerS)
        .sum();
  }

  /** Whether a fall gets less than its wish in any of the conditions. */
  public boolean missesAWish() {
    return wished().stream()
        .anyMatch(fall -> outcomes.stream().anyMatch(outcome -> outcome.isUnderWish(fall.name())));
  }
}
