package rillwright.solver.study.valvesetting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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

  PumpShortfall(Network open, Targets targets, List<Throttle> throttles, HeldOthers others) {
    this.open = others.shut(open);
    this.targets = targets;
    this.throttles = throttles;
    this.others = others;
  }

  /**
   * The head, m, given by each pump more, all falls but the hardest to serve being held to their
   * targets; empty if no head would do it, or some is lacking and there is no pump.
   */
  OptionalDouble find() {
    double most = 0;
    for (PointName candidate : targets.falls()) {
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
    }
    return OptionalDouble.of(most);
  }

  /** Share of its target that a fall lacks at a lift of all pumps. */
  private double lack(PointName fall, List<Throttle> closed, double liftM) {
    try {
      Throttling throttling = new Throttling(lifted(others.in(open, fall), liftM), targets);
      return 1 - targets.shareAt(fall, throttling.at(1, closed).state());
    } catch (NoBalance drawsGoShort) {
      return 1;
    }
  }

  private static Network lifted(Network network, double liftM) {
    Network lifted = network;
    for (Line line : network.lines()) {
      if (hasPump(line)) {
        List<Part> parts = new ArrayList<>(line.parts());
        parts.add(new Loss(new Lift(liftM), Optional.empty()));
        lifted = lifted.withLine(line.withParts(parts));
      }
    }
    return lifted;
  }

  private static boolean hasPump(Line line) {
    return line.has(Pump.class);
  }
}
