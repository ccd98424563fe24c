package rillwright.solver.study.duty;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.HeadNeeded;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.study.duty.Duty.AsTheyStand;
import rillwright.solver.study.duty.Duty.Throttled;

/**
 * Finds the {@link Duty} of the pump at a place.
 *
 * <p>Every fall's flow rises with the pump's, so the least sufficient flow is found by halving. The
 * governing fall is the one that asks for the most head when all get exactly their wishes.
 */
public final class DutyFinder {
  private static final double RELATIVE_ACCURACY = 1e-13;

  /**
   * How many times the sum of the wishes a pump may have to make where other outlets take their
   * share.
   */
  private static final double MOST_TIMES_WISHES = 1000;

  private final Network network;
  private final PumpPlace place;
  private final Map<PointName, Double> wishes = new LinkedHashMap<>();
  private final double sumOfWishes;

  private DutyFinder(Network network, PumpPlace place) {
    this.network = network;
    this.place = place;
    for (Point point : network.points()) {
      point.wantM3PerS().ifPresent(want -> wishes.put(point.name(), want));
    }
    this.sumOfWishes = wishes.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /**
   * The duty of the pump at a place.
   *
   * @throws IllegalArgumentException if no fall or outlet has a wish
   */
  public static Duty find(Network network, PumpPlace place) {
    return new DutyFinder(network, place).run();
  }

  private Duty run() {
    if (wishes.isEmpty()) {
      throw new IllegalArgumentException("no fall or outlet has a wish");
    }
    Optional<HeadNeeded> asTheyStand =
        leastFlow(flow -> HeadNeeded.at(network, place, flow), this::worstSurplus);
    Optional<HeadNeeded> throttled = Optional.empty();
    Optional<PointName> governing = Optional.empty();
    for (PointName candidate : wishes.keySet()) {
      Optional<HeadNeeded> needed = throttledFor(candidate);
      boolean higher =
          needed.isPresent()
              && needed.get().headM() > throttled.map(HeadNeeded::headM).orElse(-1e9);
      if (higher) {
        throttled = needed;
        governing = Optional.of(candidate);
      }
    }
    boolean unreachable = asTheyStand.isEmpty() || throttled.isEmpty();
    return new Duty(
        asTheyStand.map(this::describe),
        throttled.map(needed -> new Throttled(needed.flowM3PerS(), needed.headM())),
        governing,
        unreachable
            ? Optional.of(HeadNeeded.greatestFlowM3PerS(network, place, 2 * sumOfWishes))
            : Optional.empty());
  }

  private AsTheyStand describe(HeadNeeded needed) {
    Map<PointName, Double> falls = new LinkedHashMap<>();
    wishes.keySet().forEach(fall -> falls.put(fall, needed.state().point(fall).outflowM3PerS()));
    return new AsTheyStand(needed.flowM3PerS(), needed.headM(), falls);
  }

  /** Least surplus of any fall over its wish, as a share of the wish. */
  private double worstSurplus(HeadNeeded needed) {
    return wishes.entrySet().stream()
        .mapToDouble(
            wish -> needed.state().point(wish.getKey()).outflowM3PerS() / wish.getValue() - 1)
        .min()
        .orElseThrow();
  }

  /** All other falls throttled to their wishes, this one with its way wide open. */
  private Optional<HeadNeeded> throttledFor(PointName open) {
    Map<PointName, Double> others = new LinkedHashMap<>(wishes);
    others.remove(open);
    double wish = wishes.get(open);
    Optional<HeadNeeded> atSum = HeadNeeded.at(network, place, sumOfWishes, others);
    if (atSum.isPresent() && Math.abs(surplus(atSum.get(), open, wish)) < 1e-9) {
      return atSum;
    }
    return leastFlow(
        flow -> HeadNeeded.at(network, place, flow, others), needed -> surplus(needed, open, wish));
  }

  private static double surplus(HeadNeeded needed, PointName fall, double wish) {
    return needed.state().point(fall).outflowM3PerS() / wish - 1;
  }

  /** The least flow of the pump at which a surplus that rises with it is 0 or more. */
  private Optional<HeadNeeded> leastFlow(
      DoubleFunction<Optional<HeadNeeded>> at, ToDoubleFunction<HeadNeeded> surplus) {
    double low = 0;
    double high = sumOfWishes;
    Optional<HeadNeeded> best = at.apply(high);
    while (best.isPresent() && surplus.applyAsDouble(best.get()) < 0) {
      low = high;
      high *= 1.5;
      best = high > MOST_TIMES_WISHES * sumOfWishes ? Optional.empty() : at.apply(high);
    }
    // A flow that cannot be drawn counts as too much: below it there may be one that is enough.
    while (high - low > RELATIVE_ACCURACY * high) {
      double middle = (low + high) / 2;
      Optional<HeadNeeded> tried = at.apply(middle);
      if (tried.isPresent() && surplus.applyAsDouble(tried.get()) < 0) {
        low = middle;
      } else {
        high = middle;
        best = tried;
      }
    }
    return best;
  }
}
