package rillwright.solver.study.valvesetting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.law.Lift;
import rillwright.solver.law.curve.FallingRoot;
import rillwright.solver.network.Line;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;

/** The head that the pumps lack for every fall to get its target. */
final class PumpShortfall {
  private static final double TOLERANCE = 1e-12;

  /** A share of a target that nobody lacks. */
  private static final double NOTICEABLE = 1e-9;

  /** A pump that lacks more than this, m, does not lack head: the water does not come. */
  private static final double MOST_M = 500;

  private final Network open;
  private final Targets targets;
  private final List<Throttle> throttles;
  private final HeldOthers others;
  private final SteadyState like;
  private final SearchLeft work;

  PumpShortfall(
      SteadyState wideOpen,
      Targets targets,
      List<Throttle> throttles,
      HeldOthers others,
      SearchLeft work) {
    this.work = work;
    this.like = wideOpen;
    this.open = others.shut(wideOpen.network());
    this.targets = targets;
    this.throttles = throttles;
    this.others = others;
  }

  /**
   * The head, m, given by each pump more, all falls but the hardest to serve being held to their
   * targets; empty if no head would do it, or some is lacking and there is no pump.
   *
   * <p>A fall that gets its target held, while another gets just its own with its way wide open,
   * asks for no more than that other; so only the one that lacks most is tried next.
   */
  OptionalDouble find() {
    double most = 0;
    Set<PointName> left = new LinkedHashSet<>(targets.falls());
    Optional<PointName> next = left.stream().findFirst();
    while (next.isPresent() && !work.isSpent()) {
      PointName candidate = next.get();
      left.remove(candidate);
      List<Throttle> closed =
          throttles.stream().filter(throttle -> !throttle.falls().contains(candidate)).toList();
      if (lack(candidate, closed, most) > NOTICEABLE) {
        if (!open.isPumped()) {
          return OptionalDouble.empty();
        }
        double high = Math.max(1, 2 * most);
        while (high <= MOST_M && lack(candidate, closed, high) > 0) {
          high *= 2;
        }
        if (high > MOST_M) {
          return OptionalDouble.empty();
        }
        most = FallingRoot.find(lift -> lack(candidate, closed, lift), most, high, TOLERANCE);
      }
      Optional<SteadyState> state = at(candidate, closed, most);
      next =
          left.stream()
              .filter(fall -> lack(fall, state) > NOTICEABLE)
              .max(Comparator.comparingDouble(fall -> lack(fall, state)));
    }
    return OptionalDouble.of(most);
  }

  /** Share of its target that a fall lacks at a lift of all pumps. */
  private double lack(PointName fall, List<Throttle> closed, double liftM) {
    if (work.isSpent()) {
      return 0;
    }
    return lack(fall, at(fall, closed, liftM));
  }

  private double lack(PointName fall, Optional<SteadyState> state) {
    return state.map(found -> 1 - targets.shareAt(fall, found)).orElse(1.0);
  }

  /** The state at a lift of all pumps, one fall open and the others held; empty without one. */
  private Optional<SteadyState> at(PointName fall, List<Throttle> closed, double liftM) {
    try {
      Network lifted = lifted(others.in(open, fall), liftM);
      return Optional.of(Throttling.near(lifted, targets, like, work).at(1, closed).state());
    } catch (NoBalance drawsGoShort) {
      return Optional.empty();
    }
  }

  private static Network lifted(Network network, double liftM) {
    List<Line> lifted = new ArrayList<>();
    for (Line line : network.lines()) {
      if (hasPump(line)) {
        List<Part> parts = new ArrayList<>(line.parts());
        parts.add(new Loss(new Lift(liftM), Optional.empty()));
        lifted.add(line.withParts(parts));
      }
    }
    return network.withLines(lifted);
  }

  private static boolean hasPump(Line line) {
    return line.has(Pump.class);
  }
}
