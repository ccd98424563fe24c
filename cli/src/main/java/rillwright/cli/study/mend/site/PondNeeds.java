package rillwright.cli.study.mend.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.cli.file.Project;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.finding.Finding;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.stream.LevelBudget;
import rillwright.solver.stream.StreamBudget;
import rillwright.solver.stream.StreamBudgetFinder;

/**
 * What ponds need once their streams run: those that starve a pump, run over at a stop, or last
 * less than some days without topping up.
 *
 * @param days that the water must last; empty to ask for none
 */
public record PondNeeds(OptionalDouble days) {
  private static final String TOO_FEW_DAYS = "starves-without-topping-up";
  private static final Set<String> STARVING =
      Set.of("starves-at-start", "draws-air-running", "skimmer-at-its-limit");
  private static final Set<String> RUNNING_OVER =
      Set.of(
          "runs-over-at-stop", "over-liner-edge", "rest-above-overflow", "rest-above-liner-edge");

  /** Whether a code is about the water of a pond. */
  static boolean has(String code) {
    return isOfStarving(code) || isOfOverflow(code);
  }

  /** Whether a code says that too little water is left. */
  public static boolean isOfStarving(String code) {
    return STARVING.contains(code) || code.equals(TOO_FEW_DAYS);
  }

  /** Whether a code says that water is lost at rest or at a stop. */
  public static boolean isOfOverflow(String code) {
    return RUNNING_OVER.contains(code);
  }

  /** What ponds of a project need; empty if their levels have no balance. */
  public Optional<List<Need>> in(Project project) {
    if (project.streams().streams().isEmpty() && days.isEmpty()) {
      return Optional.of(List.of());
    }
    StreamBudget budget;
    try {
      budget = StreamBudgetFinder.find(project.streams());
    } catch (NoBalance | SearchFailed none) {
      return Optional.empty();
    }
    List<Need> needs = new ArrayList<>();
    for (Finding finding : budget.findings()) {
      boolean counts = STARVING.contains(finding.code()) || isOfOverflow(finding.code());
      if (counts && isBasinOrChamber(finding.at(), project.network())) {
        needs.add(need(finding.at(), finding.code()));
      }
    }
    boolean starves = needs.stream().anyMatch(need -> isOfStarving(need.code()));
    for (LevelBudget level : budget.basins()) {
      double lasts = level.daysToStarve().orElse(Double.POSITIVE_INFINITY);
      if (!starves && lasts < days.orElse(0)) {
        needs.add(need(level.basin().name().value(), TOO_FEW_DAYS));
      }
    }
    return Optional.of(needs);
  }

  private static Need need(String at, String code) {
    return new Need(at, new PointName(at), code, Optional.empty(), OptionalDouble.empty(), 0);
  }

  private static boolean isBasinOrChamber(String at, Network network) {
    return network.points().stream()
        .filter(point -> point.name().value().equals(at))
        .anyMatch(PondNeeds::holdsWater);
  }

  private static boolean holdsWater(Point point) {
    return point instanceof Basin || point instanceof Chamber;
  }
}
