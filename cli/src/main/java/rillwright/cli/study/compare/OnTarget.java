package rillwright.cli.study.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.steady.PointState;
import rillwright.solver.trial.Verdict;

/**
 * What two projects give a point that has a target in one of them.
 *
 * @param at the point
 * @param a in the first project; empty if the point has no target there
 * @param b in the second project
 */
public record OnTarget(String at, Optional<Got> a, Optional<Got> b) {
  /**
   * What a point gets.
   *
   * @param targetM3PerS above 0
   * @param flowM3PerS out of the network
   * @param under whether it is less than its target
   */
  public record Got(double targetM3PerS, double flowM3PerS, boolean under) {
    /** Flow over target. */
    public double fraction() {
      return flowM3PerS / targetM3PerS;
    }

    /** How far it is from what is wanted, as a share of the target; 0 from 100 to 125 %. */
    private double off() {
      return under ? 1 - fraction() : Math.max(0, fraction() - Verdict.TOO_MUCH_SHARE);
    }
  }

  /** Which project serves a target better. */
  public enum Better {
    /** The first. */
    A,
    /** The second. */
    B,
    /** Both meet it. */
    BOTH,
    /** Neither meets it, and neither is nearer. */
    NEITHER,
    /** It has a target in one of them only. */
    NOT_COMPARABLE
  }

  /** Shares of a target that nobody sees at a fall. */
  private static final double SAME = 0.005;

  /** Which serves it better: the one that meets it, else the one that is nearer. */
  public Better better() {
    if (a.isEmpty() || b.isEmpty()) {
      return Better.NOT_COMPARABLE;
    }
    double first = a.get().off();
    double second = b.get().off();
    if (Math.abs(first - second) > SAME) {
      return first < second ? Better.A : Better.B;
    }
    return first == 0 ? Better.BOTH : Better.NEITHER;
  }

  /** Each point with a target in either project. */
  static List<OnTarget> listBetween(Solved a, Solved b) {
    Map<String, Got> first = got(a);
    Map<String, Got> second = got(b);
    Map<String, Got> all = new LinkedHashMap<>(first);
    second.forEach(all::putIfAbsent);
    List<OnTarget> targets = new ArrayList<>();
    for (String at : all.keySet()) {
      targets.add(
          new OnTarget(
              at, Optional.ofNullable(first.get(at)), Optional.ofNullable(second.get(at))));
    }
    return targets;
  }

  private static Map<String, Got> got(Solved solved) {
    Map<String, Got> got = new LinkedHashMap<>();
    for (PointState state : solved.state().points()) {
      OptionalDouble target = state.point().targetM3PerS();
      if (target.orElse(0) > 0) {
        got.put(
            state.point().name().value(),
            new Got(target.getAsDouble(), state.outflowM3PerS(), state.isUnderTarget()));
      }
    }
    return got;
  }
}
