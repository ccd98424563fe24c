package rillwright.cli.study.mend.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Findings;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.trial.FarFromBest;

/**
 * Something that does not do what it should.
 *
 * @param at the point or line
 * @param point that a change for it serves: the point, or where the line leads
 * @param code of the finding that tells it
 * @param condition of the site in which it is so; empty where it is so as written
 * @param targetM3PerS its target, m³/s, where it has one
 * @param hasM3PerS what flows there, m³/s
 */
public record Need(
    String at,
    PointName point,
    String code,
    Optional<String> condition,
    OptionalDouble targetM3PerS,
    double hasM3PerS) {
  public static final String UNDER_TARGET = "under-target";
  public static final String UNDER_IN_CONDITION = "under-target-in-condition";

  /** At the levels that run, nothing topped up. */
  public static final String UNDER_RUNNING = "under-target-running";

  public static final String OVER_TARGET = "over-target";
  public static final String STARVED = "starved-chamber";

  /** Of a fall that a little less water in the pond halves. */
  public static final String TOUCHY = "touchy";

  private static final Set<String> OF_POINTS =
      Set.of(UNDER_TARGET, OVER_TARGET, STARVED, TOUCHY, "runs-over");
  private static final Set<String> OF_PUMPS =
      Set.of("near-shut-off", "below-minimum-flow", "past-published-range");

  /** What a state needs, in the order of its findings. */
  public static List<Need> in(SteadyState state, List<Finding> findings) {
    List<Need> needs = new ArrayList<>();
    for (Finding finding : findings) {
      if (OF_POINTS.contains(finding.code())) {
        needs.add(at(new PointName(finding.at()), finding, state));
      } else if (OF_PUMPS.contains(finding.code())) {
        needs.add(in(new LineName(finding.at()), finding, state));
      }
    }
    return needs;
  }

  private static Need at(PointName name, Finding finding, SteadyState state) {
    Point point = state.network().point(name);
    return new Need(
        finding.at(),
        name,
        finding.code(),
        Optional.empty(),
        point.targetM3PerS(),
        state.point(name).outflowM3PerS());
  }

  /** Pumps that run far from the flow of their best efficiency. */
  static List<Need> farFromBest(SteadyState state) {
    return FarFromBest.in(state).stream()
        .map(finding -> in(new LineName(finding.at()), finding, state))
        .toList();
  }

  /** What pumps lack at their inlets. */
  public static List<Need> ofSuction(SteadyState state) {
    return Findings.ofSuction(state).stream()
        .map(
            finding ->
                finding.code().equals("low-submergence")
                    ? at(new PointName(finding.at()), finding, state)
                    : in(new LineName(finding.at()), finding, state))
        .toList();
  }

  private static Need in(LineName line, Finding finding, SteadyState state) {
    return new Need(
        finding.at(),
        state.network().line(line).to(),
        finding.code(),
        Optional.empty(),
        OptionalDouble.empty(),
        state.line(line).flowM3PerS());
  }

  /** A fall with a target that gets too little or too much. */
  static Need ofTarget(Point fall, double hasM3PerS) {
    boolean isUnder = hasM3PerS < fall.targetM3PerS().orElse(0);
    return new Need(
        fall.name().value(),
        fall.name(),
        isUnder ? UNDER_TARGET : OVER_TARGET,
        Optional.empty(),
        fall.targetM3PerS(),
        hasM3PerS);
  }

  /** A fall that lacks water in a condition, or at the levels that run. */
  static Need inCondition(Point fall, WorstShares.InCondition worst) {
    double target = fall.targetM3PerS().orElse(0);
    return new Need(
        fall.name().value(),
        fall.name(),
        worst.condition().isPresent() ? UNDER_IN_CONDITION : UNDER_RUNNING,
        worst.condition(),
        fall.targetM3PerS(),
        worst.share() * target);
  }

  /** Some without those of falls in conditions that lack water as written too. */
  public static List<Need> eachOnce(List<Need> needs) {
    return needs.stream()
        .filter(
            need ->
                !need.isOfCondition()
                    || needs.stream().noneMatch(it -> it.isUnder() && it.at.equals(need.at)))
        .toList();
  }

  /** Whether it is one and the same: at this point or line, for this reason. */
  boolean isLike(Need other) {
    return at.equals(other.at) && code.equals(other.code);
  }

  /** Whether it is what a finding tells. */
  public boolean tells(Finding finding) {
    return at.equals(finding.at()) && code.equals(finding.code());
  }

  /** Whether it is about the water of a pond. */
  public boolean isOfPond() {
    return PondNeeds.has(code);
  }

  /** Whether a fall lacks water in a condition of the site, or at the levels that run. */
  public boolean isOfCondition() {
    return code.equals(UNDER_IN_CONDITION) || code.equals(UNDER_RUNNING);
  }

  /** Whether a pond runs over when its pump stops, which topping it up with the pump off avoids. */
  public boolean runsOverAtStop() {
    return code.equals("runs-over-at-stop");
  }

  /** Whether it is about a target. */
  public boolean isOfTarget() {
    return code.equals(UNDER_TARGET) || code.equals(OVER_TARGET);
  }

  /** Whether a pump runs far from its best efficiency. */
  public boolean isOfEfficiency() {
    return code.equals(FarFromBest.CODE);
  }

  /** Whether a fall gets too little. */
  public boolean isUnder() {
    return code.equals(UNDER_TARGET);
  }
}
