package rillwright.cli.study.mend.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.stream.LevelBudget;
import rillwright.solver.stream.StreamBudget;
import rillwright.solver.stream.StreamBudgetFinder;
import rillwright.solver.stream.StreamPlan;

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

  private static final Set<String> MARKS =
      Set.of(
          "overflow-above-edge",
          "near-grade",
          "near-mouth-top",
          "mouth-drowned-at-stop",
          "below-sill",
          "sill-below-floor");

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

  /** Whether anything is asked of a project's ponds. */
  boolean asksOf(Project project) {
    return !project.streams().streams().isEmpty() || days.isPresent();
  }

  /** A network of a project as it runs, nothing topped up; empty if its levels have no balance. */
  static Optional<SteadyState> running(Project project, Network network, WorkLeft work) {
    StreamPlan plan = project.streams();
    return budget(new StreamPlan(network, plan.streams(), plan.boxes(), plan.loss()), work)
        .map(budget -> budget.running().state());
  }

  private static Optional<StreamBudget> budget(StreamPlan plan, WorkLeft work) {
    try {
      StreamBudget budget = StreamBudgetFinder.find(plan);
      work.spendSteps(budget.iterations());
      return Optional.of(budget);
    } catch (NoBalance | SearchFailed none) {
      return Optional.empty();
    }
  }

  /** What ponds of a project are; empty if their levels have no balance. */
  public Optional<PondWater> in(Project project, WorkLeft work) {
    return asksOf(project)
        ? budget(project.streams(), work).map(budget -> in(project.network(), budget))
        : Optional.of(PondWater.NOT_ASKED);
  }

  private PondWater in(Network network, StreamBudget budget) {
    List<Need> needs = new ArrayList<>();
    List<Need> marks = new ArrayList<>();
    for (Finding finding : budget.findings()) {
      boolean isOfPond = isBasinOrChamber(finding.at(), network);
      if (isOfPond && (STARVING.contains(finding.code()) || isOfOverflow(finding.code()))) {
        needs.add(need(finding.at(), finding.code()));
      } else if (isOfPond && MARKS.contains(finding.code())) {
        marks.add(need(finding.at(), finding.code()));
      }
    }
    boolean starves = needs.stream().anyMatch(need -> isOfStarving(need.code()));
    for (LevelBudget level : budget.basins()) {
      double lasts = level.daysToStarve().orElse(Double.POSITIVE_INFINITY);
      if (!starves && lasts < days.orElse(0)) {
        needs.add(need(level.basin().name().value(), TOO_FEW_DAYS));
      }
    }
    SteadyState running = budget.running().state();
    Targets targets = Targets.of(network);
    Map<PointName, Double> shares = new LinkedHashMap<>();
    targets.falls().forEach(fall -> shares.put(fall, targets.shareAt(fall, running)));
    return new PondWater(needs, marks, Room.in(budget), shares);
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
