package rillwright.solver.pumping;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;

/**
 * The flow and head that targets ask of the pump at a place, with the valves as they stand and with
 * the falls that would get too much throttled.
 *
 * <p>Every fall's flow rises with the pump's, so the least sufficient flow is found between one
 * that is too little and one that is enough: by false position, the weight of an end that stays
 * halved, and by plain halving at every fourth try.
 *
 * <p>Source: Dowell, M. and Jarratt, P. (1971), "A modified regula falsi method for computing the
 * root of an equation", BIT 11, 168–174 (from memory).
 */
public final class TargetHead {
  /** As closely as flows can be distinguished. */
  private static final double EXACT = 1e-13;

  /**
   * How many times the sum of the targets a pump may have to make where other outlets take their
   * share.
   */
  private static final double MOST_TIMES_TARGETS = 1000;

  /** Less than this share of all targets is none: a search that comes so far down asks for none. */
  private static final double NOTHING = 1e-9;

  /** Lacking less is having enough, m: below any measurement. */
  private static final double ENOUGH_M = 1e-9;

  private final Network network;
  private final PumpPlace place;
  private final Targets targets;
  private final double sumOfTargets;
  private final double accuracy;

  /** What happened at the flow that was tried last: the next one is near it. */
  private Optional<SteadyState> last = Optional.empty();

  /**
   * What a fall asks for.
   *
   * @param governing the fall that decides the head
   * @param needed the pump's flow and head
   */
  public record Governed(PointName governing, HeadNeeded needed) {}

  /**
   * A search for exact flows.
   *
   * @throws IllegalArgumentException if there is no target
   */
  public TargetHead(Network network, PumpPlace place, Targets targets) {
    this(network, place, targets, EXACT);
  }

  /**
   * A search.
   *
   * @param accuracy how closely the pump's flow is found, a share of it
   * @throws IllegalArgumentException if there is no target
   */
  public TargetHead(Network network, PumpPlace place, Targets targets, double accuracy) {
    if (targets.isEmpty()) {
      throw new IllegalArgumentException("no fall or outlet has a target");
    }
    this.network = network;
    this.place = place;
    this.targets = targets;
    this.sumOfTargets = targets.sumM3PerS();
    this.accuracy = accuracy;
  }

  /**
   * The least flow at which every fall gets at least its target; empty if none that can be drawn.
   */
  public Optional<HeadNeeded> asTheyStand() {
    return leastFlow(
        at(sumOfTargets, Map.of()),
        flow -> at(flow, Map.of()),
        needed -> targets.shareAt(targets.worstIn(needed.state()), needed.state()) - 1);
  }

  /**
   * Every fall at its target: the flow of all at the head of the fall that asks for the most; empty
   * if that cannot be drawn or one of them cannot be reached.
   *
   * <p>With all others at their targets, heads rise with the pump's flow; so a fall before whose
   * way out stands enough head while another gets just its target asks for less than that other.
   * Only the one that lacks the most head is tried next, and hardly ever more than three of all.
   * The highest is tried first: where no pump is needed it depends on the first what stands at a
   * pump that gives nothing, and that must not be the order of the file.
   */
  public Optional<Governed> throttled() {
    return throttled(Optional.empty());
  }

  /**
   * The same, looked for from another fall on.
   *
   * @param likely to decide the head; empty for the highest
   */
  public Optional<Governed> throttled(Optional<PointName> likely) {
    Set<PointName> left = new LinkedHashSet<>(targets.falls());
    Optional<PointName> next =
        likely.or(() -> left.stream().max(Comparator.comparingDouble(this::asksM)));
    Optional<Governed> highest = Optional.empty();
    while (next.isPresent()) {
      PointName candidate = next.get();
      left.remove(candidate);
      Optional<HeadNeeded> needed = throttledFor(candidate);
      if (needed.isEmpty()) {
        return Optional.empty();
      }
      if (highest.isEmpty() || needed.get().headM() > highest.get().needed().headM()) {
        highest = Optional.of(new Governed(candidate, needed.get()));
      }
      SteadyState state = needed.get().state();
      next =
          left.stream()
              .filter(fall -> lackM(fall, state) > ENOUGH_M)
              .max(Comparator.comparingDouble(fall -> lackM(fall, state)));
    }
    return highest;
  }

  /**
   * The head that a fall or outlet lacks for its target where it is held to it, m; below 0 if it
   * has more, without bound where heads are not known.
   */
  private double lackM(PointName fall, SteadyState state) {
    return asksM(fall) - state.point(fall).headM().orElse(Double.NEGATIVE_INFINITY);
  }

  /** The head at a fall or outlet with which it gets its target, m. */
  private double asksM(PointName fall) {
    Point point = network.point(fall);
    return point
        .spill()
        .map(out -> out.levelM() + out.law().headLossAt(targets.at(fall)))
        .orElseGet(() -> point.heldHeadM().orElseThrow());
  }

  /** All other falls throttled to their targets, this one with its way wide open. */
  private Optional<HeadNeeded> throttledFor(PointName open) {
    Map<PointName, Double> others = new LinkedHashMap<>(targets.flowM3PerS());
    others.remove(open);
    Optional<HeadNeeded> atSum = at(sumOfTargets, others);
    if (atSum.isPresent() && Math.abs(surplus(atSum.get(), open)) < 1e-9) {
      return atSum;
    }
    return leastFlow(atSum, flow -> at(flow, others), needed -> surplus(needed, open));
  }

  private Optional<HeadNeeded> at(double flowM3PerS, Map<PointName, Double> others) {
    Optional<HeadNeeded> needed = HeadNeeded.at(network, place, flowM3PerS, others, last);
    last = needed.map(HeadNeeded::state).or(() -> last);
    return needed;
  }

  private double surplus(HeadNeeded needed, PointName fall) {
    return targets.shareAt(fall, needed.state()) - 1;
  }

  /**
   * The least flow of the pump at which a surplus that rises with it is 0 or more.
   *
   * @param atSum what happens at the sum of all targets
   */
  private Optional<HeadNeeded> leastFlow(
      Optional<HeadNeeded> atSum,
      DoubleFunction<Optional<HeadNeeded>> at,
      ToDoubleFunction<HeadNeeded> surplus) {
    double low = 0;
    double lack = 1;
    double high = sumOfTargets;
    Optional<HeadNeeded> best = atSum;
    while (best.isPresent() && surplus.applyAsDouble(best.get()) < 0) {
      low = high;
      lack = -surplus.applyAsDouble(best.get());
      high *= 1.5;
      best = high > MOST_TIMES_TARGETS * sumOfTargets ? Optional.empty() : at.apply(high);
    }
    double over = best.isPresent() ? surplus.applyAsDouble(best.get()) : Double.NaN;
    // A flow that cannot be drawn counts as too much: below it there may be one that is enough.
    int side = 0;
    for (int round = 0; high - low > accuracy * high && !(over <= accuracy); round++) {
      Optional<HeadNeeded> least = best;
      if (low == 0 && high < NOTHING * sumOfTargets) {
        return at.apply(0).filter(still -> surplus.applyAsDouble(still) >= 0).or(() -> least);
      }
      double position = lack / (lack + over);
      boolean halve = !(position > 0 && position < 1) || round % 4 == 3;
      double middle = low + (high - low) * (halve ? 0.5 : position);
      Optional<HeadNeeded> tried = at.apply(middle);
      double found = tried.isPresent() ? surplus.applyAsDouble(tried.get()) : Double.NaN;
      if (found < 0) {
        low = middle;
        lack = -found;
        over = side < 0 ? over / 2 : over;
        side = -1;
      } else {
        high = middle;
        best = tried;
        over = found;
        lack = side > 0 ? lack / 2 : lack;
        side = 1;
      }
    }
    return best;
  }
}
