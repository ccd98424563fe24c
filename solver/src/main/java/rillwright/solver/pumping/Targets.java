package rillwright.solver.pumping;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;

/**
 * Targets over falls and out of outlets.
 *
 * @param flowM3PerS m³/s, greater than 0, in the order of the network; copied
 */
public record Targets(Map<PointName, Double> flowM3PerS) {
  /** Less than this share of all targets is next to nothing; common practice, no source. */
  private static final double NEXT_TO_NOTHING = 0.01;

  public Targets {
    flowM3PerS = Collections.unmodifiableMap(new LinkedHashMap<>(flowM3PerS));
  }

  /** The targets of a network; empty if there is no target. */
  public static Targets of(Network network) {
    Map<PointName, Double> targets = new LinkedHashMap<>();
    for (Point point : network.points()) {
      double target = point.targetM3PerS().orElse(0);
      if (target > 0) {
        targets.put(point.name(), target);
      }
    }
    return new Targets(targets);
  }

  /** The same targets, each times a share. */
  public Targets times(double share) {
    Map<PointName, Double> scaled = new LinkedHashMap<>();
    flowM3PerS.forEach((fall, target) -> scaled.put(fall, share * target));
    return new Targets(scaled);
  }

  /** Whether there is no target. */
  public boolean isEmpty() {
    return flowM3PerS.isEmpty();
  }

  /** The falls and outlets with a target. */
  public Set<PointName> falls() {
    return flowM3PerS.keySet();
  }

  /** The target of a fall, m³/s. */
  public double at(PointName fall) {
    return flowM3PerS.get(fall);
  }

  /** All targets together, m³/s. */
  public double sumM3PerS() {
    return flowM3PerS.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** Whether a flow is so small beside the targets that a pump for it would stand dead. */
  public boolean isNextToNothing(double flowM3PerS) {
    return flowM3PerS < NEXT_TO_NOTHING * sumM3PerS();
  }

  /** What a fall gets, as a share of its target. */
  public double shareAt(PointName fall, SteadyState state) {
    return state.point(fall).outflowM3PerS() / at(fall);
  }

  /**
   * The fall that gets the least share of its target, the first of several.
   *
   * @throws IllegalStateException if there is no target
   */
  public PointName worstIn(SteadyState state) {
    return worstIn(state, falls());
  }

  /**
   * The one of some falls that gets the least share of its target, the first of several.
   *
   * @param among names of falls with a target
   * @throws IllegalStateException if there are none
   */
  public PointName worstIn(SteadyState state, Set<PointName> among) {
    return among.stream()
        .min(Comparator.comparingDouble(fall -> shareAt(fall, state)))
        .orElseThrow(() -> new IllegalStateException("there is no target"));
  }

  /** The greatest share of its target that any fall gets; 0 if there is no target. */
  public double greatestShareIn(SteadyState state) {
    double greatest = 0;
    for (PointName fall : flowM3PerS.keySet()) {
      greatest = Math.max(greatest, shareAt(fall, state));
    }
    return greatest;
  }
}
