package rillwright.solver.trial;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.HeadNeeded;
import rillwright.solver.pumping.LeastShutOff;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.pumping.TargetHead;
import rillwright.solver.pumping.TargetHead.Governed;
import rillwright.solver.pumping.Targets;

/**
 * What the targets of a network ask of the pump at a place; found once for all pumps tried there.
 */
public final class Demand {
  /** How closely a share of targets is found. */
  static final double SHARE_ACCURACY = 1e-5;

  /** How closely flows are found in the search for a share, a share of them. */
  private static final double ABOUT = 1e-7;

  private final Network network;
  private final PumpPlace place;
  private final Targets targets;
  private final Optional<HeadNeeded> asTheyStand;
  private final Optional<Governed> throttled;
  private final Optional<Governed> throttledJustShort;
  private final Optional<LeastShutOff> leastShutOff;
  private final Map<PointName, OptionalDouble> lifts = new HashMap<>();

  private final Map<Double, Optional<Governed>> halves = new ConcurrentHashMap<>();

  /** Found when it is asked for, mostly never. */
  private OptionalDouble greatestShare = OptionalDouble.empty();

  private Demand(Network network, PumpPlace place, Targets targets) {
    this.network = network;
    this.place = place;
    this.targets = targets;
    TargetHead whole = new TargetHead(network, place, targets);
    this.asTheyStand = whole.asTheyStand();
    this.throttled = whole.throttled();
    this.throttledJustShort = throttledTo(Verdict.JUST_SHORT_SHARE);
    this.leastShutOff = LeastShutOff.at(network, place);
    for (PointName fall : targets.falls()) {
      lifts.put(fall, lift(network, place, fall));
    }
  }

  /**
   * The demand at a place.
   *
   * @throws IllegalArgumentException if there is no target
   */
  public static Demand at(Network network, PumpPlace place) {
    return new Demand(network, place, Targets.of(network));
  }

  /** The head at which the pump begins to reach a fall while the others are shut. */
  private OptionalDouble lift(Network network, PumpPlace place, PointName fall) {
    Map<PointName, Double> shut = new HashMap<>();
    for (PointName other : targets.falls()) {
      if (!other.equals(fall)) {
        shut.put(other, 0.0);
      }
    }
    Optional<HeadNeeded> needed = HeadNeeded.at(network, place, 0, shut);
    return needed.isPresent() ? OptionalDouble.of(needed.get().headM()) : OptionalDouble.empty();
  }

  /** The targets. */
  public Targets targets() {
    return targets;
  }

  /** With the valves as they stand: the least flow that is enough; empty if none can be drawn. */
  public Optional<HeadNeeded> asTheyStand() {
    return asTheyStand;
  }

  /** With the others throttled, each at its target; empty if that cannot be drawn. */
  public Optional<Governed> throttled() {
    return throttled;
  }

  /** The same, each at 95 % of its target. */
  public Optional<Governed> throttledJustShort() {
    return throttledJustShort;
  }

  /** The same, each at a share of its target; empty if that cannot be drawn. */
  Optional<Governed> throttledTo(double share) {
    return new TargetHead(network, place, targets.times(share)).throttled();
  }

  /** The same, as closely as it takes to find a share. */
  Optional<Governed> about(double share) {
    return about(share, Optional.empty());
  }

  /**
   * The same.
   *
   * @param likely to decide what is asked, if that of a share near it is known
   */
  Optional<Governed> about(double share, Optional<PointName> likely) {
    Optional<Governed> known = halves.get(share);
    return known == null
        ? new TargetHead(network, place, targets.times(share), ABOUT).throttled(likely)
        : known;
  }

  /** The same for a share that halves a way which is the same for all pumps: it is kept. */
  Optional<Governed> aboutHalf(double share) {
    return halves.computeIfAbsent(share, this::about);
  }

  /** The greatest share of all targets, 1 at most, that some pump could give every fall. */
  synchronized double greatestShare() {
    if (greatestShare.isEmpty()) {
      boolean any = throttled.isPresent() || about(SHARE_ACCURACY).isPresent();
      double low = throttled.isPresent() ? 1 : 0;
      double high = any ? 1 : 0;
      while (high - low > SHARE_ACCURACY) {
        double middle = (low + high) / 2;
        if (about(middle).isPresent()) {
          low = middle;
        } else {
          high = middle;
        }
      }
      greatestShare = OptionalDouble.of(low);
    }
    return greatestShare.getAsDouble();
  }

  /** What the high points on its way ask of it at no flow; empty without one. */
  public Optional<LeastShutOff> leastShutOff() {
    return leastShutOff;
  }

  /** By how much a pump's shut-off head fails to bring water over the high points, m, 0 or more. */
  double startingLackM(PumpSet set) {
    return leastShutOff
        .map(least -> Math.max(0, least.headM() - set.publishedShutOffHeadM()))
        .orElse(0.0);
  }

  /** Whether a pump's published shut-off head brings its water over the high points on its way. */
  boolean isStartedBy(PumpSet set) {
    return leastShutOff.isEmpty() || set.publishedShutOffHeadM() > leastShutOff.get().headM();
  }

  /**
   * Whether every fall gets its target without this pump, once those that get more are throttled.
   */
  public boolean asksNothingThrottled() {
    return throttled.isPresent() && targets.isNextToNothing(throttled.get().needed().flowM3PerS());
  }

  /**
   * The head at which a pump begins to reach a fall with a target, m; empty if nothing determines
   * it.
   */
  public OptionalDouble liftM(PointName fall) {
    return lifts.getOrDefault(fall, OptionalDouble.empty());
  }
}
