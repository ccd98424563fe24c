package rillwright.solver.study.valvesetting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.solver.law.curve.FallingRoot;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;

/**
 * The largest share of its target that every fall can get.
 *
 * <p>If one fall's way is wide open and all others are held to a share, it gets the less the larger
 * the share is; where it gets just the share, that is the largest that it allows. The fall that
 * allows the least governs. No fall allows less than all get; so only the one that gets least is
 * tried next.
 */
final class ShareSearch {
  private static final double TOLERANCE = 1e-13;

  /** A share that nobody tells from another. */
  private static final double EXACT = 1e-11;

  private final Throttling throttling;
  private final Targets targets;
  private final List<Throttle> throttles;
  private final SearchLeft work;

  ShareSearch(Throttling throttling, Targets targets, List<Throttle> throttles, SearchLeft work) {
    this.work = work;
    this.throttling = throttling;
    this.targets = targets;
    this.throttles = throttles;
  }

  /**
   * The answer.
   *
   * @param targetFraction of every target, 0 or more
   * @param governing the fall that decides it
   */
  record Largest(double targetFraction, PointName governing) {}

  Largest find() {
    SteadyState open = throttling.wideOpen();
    List<PointName> poorestFirst = new ArrayList<>(targets.falls());
    poorestFirst.sort(Comparator.comparingDouble(fall -> targets.shareAt(fall, open)));
    double best = targets.shareAt(poorestFirst.get(poorestFirst.size() - 1), open);
    PointName governing = poorestFirst.get(0);
    Set<PointName> left = new LinkedHashSet<>(poorestFirst);
    Optional<PointName> next = Optional.of(governing);
    while (next.isPresent() && !work.isSpent()) {
      PointName candidate = next.get();
      left.remove(candidate);
      double least = Math.max(0, targets.shareAt(candidate, open));
      if (least < best && surplus(candidate, best) < 0) {
        best = FallingRoot.find(share -> surplus(candidate, share), least, best, TOLERANCE);
        governing = candidate;
      }
      next = poorest(left, governing, best);
    }
    return new Largest(best, governing);
  }

  /** The fall that gets least of those that do not get a share; empty if all get it. */
  private Optional<PointName> poorest(Set<PointName> falls, PointName governing, double share) {
    try {
      SteadyState state = throttling.at(share, without(governing)).state();
      return falls.stream()
          .filter(fall -> targets.shareAt(fall, state) < (1 - EXACT) * share)
          .min(Comparator.comparingDouble(fall -> targets.shareAt(fall, state)));
    } catch (NoBalance drawsGoShort) {
      return falls.stream().findFirst();
    }
  }

  /** The throttles but for that of a fall, which stays wide open. */
  List<Throttle> without(PointName fall) {
    return throttles.stream().filter(throttle -> !throttle.falls().contains(fall)).toList();
  }

  private double surplus(PointName fall, double share) {
    if (work.isSpent()) {
      return 0;
    }
    try {
      return targets.shareAt(fall, throttling.at(share, without(fall)).state()) - share;
    } catch (NoBalance drawsGoShort) {
      return 1; // so little is let through that a draw goes short: the share is far too small
    }
  }
}
