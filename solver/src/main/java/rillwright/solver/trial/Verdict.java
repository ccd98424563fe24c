package rillwright.solver.trial;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;

/**
 * Whether a pump gives the falls their targets.
 *
 * @param kind in short
 * @param worst the fall that gets the least share of its target with the valves as they stand
 * @param leastFraction that share
 * @param starves whether it draws a chamber down with the valves as they stand
 * @param throttled where it runs when throttled, if it meets the targets so
 * @param throttledShare the share of its target that every fall gets then
 * @param throttledState what flows where then; its pump gives no head there
 * @param missingValves the falls that have to be throttled then and have no valve for it
 * @param attainableShare where it falls short, the greatest share of its target that every fall can
 *     get once the others are throttled; else empty
 * @param missingHeadM the head that it lacks at the targets' flow with the others throttled, m;
 *     empty if it lacks none or that flow cannot be drawn
 */
public record Verdict(
    Kind kind,
    PointName worst,
    double leastFraction,
    boolean starves,
    Optional<RunningPoint> throttled,
    OptionalDouble throttledShare,
    Optional<SteadyState> throttledState,
    List<PointName> missingValves,
    OptionalDouble attainableShare,
    OptionalDouble missingHeadM) {
  public Verdict {
    missingValves = List.copyOf(missingValves);
  }

  /** More than this share of a target is so much that it should be throttled. */
  public static final double TOO_MUCH_SHARE = 1.25;

  /** A fall that gets this share of its target has it. */
  public static final double ENOUGH_SHARE = 1 - Point.UNSEEN_SHARE;

  /** A fall that gets this share of its target is just short of it. */
  public static final double JUST_SHORT_SHARE = 0.95;

  /** A verdict in short, the best first. */
  public enum Kind {
    /** Every fall gets its target and up to a quarter more. */
    MEETS_TARGET(true),
    /** Every fall gets its target less 5 %, up to a quarter more. */
    JUST_SHORT(true),
    /** Some fall gets more than that; throttled, every fall gets its target. */
    THROTTLED(true),
    /** Throttled, every fall gets 95 % of its target, though not all of it. */
    THROTTLED_JUST_SHORT(true),
    /** Some fall gets too little, whatever is throttled. */
    FALLS_SHORT(false),
    /** Its published head at no flow does not bring the water over a high point. */
    CANNOT_START(false),
    /** Its head at no flow does not reach a fall. */
    CANNOT_LIFT(false),
    /** With the falls throttled every fall gets its target without it; it would stand dead. */
    NOT_NEEDED(false);

    private final boolean meetsTargets;

    Kind(boolean meetsTargets) {
      this.meetsTargets = meetsTargets;
    }
  }

  /** Whether a fall gets nothing from it, whatever is throttled. */
  public boolean bringsNothing() {
    return kind == Kind.CANNOT_START || kind == Kind.CANNOT_LIFT;
  }

  /** Whether it meets the targets: just short and throttled included. */
  public boolean meetsTargets() {
    return kind.meetsTargets;
  }
}
