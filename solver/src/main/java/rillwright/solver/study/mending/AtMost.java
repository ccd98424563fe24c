package rillwright.solver.study.mending;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Placed;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * The most that a fall can get by one kind of change, whatever its size: what such a change could
 * take off the fall's own way is gone, the other branches stay as they are. Each fall is looked at
 * by itself, so that all together may get less.
 */
public final class AtMost {
  /**
   * So much wider a pipe takes next to nothing: friction goes with the fifth power of the bore, all
   * else with the fourth.
   */
  private static final double WIDE = 100;

  private final SteadyState state;
  private final PointName fall;
  private final Set<LineName> way;

  /** The most that a fall can get. */
  public AtMost(SteadyState state, PointName fall) {
    this.state = state;
    this.fall = fall;
    this.way = OwnWay.to(fall, state);
  }

  /**
   * Without any loss that depends on the bore of its way: friction, fittings, valves, ends. High
   * points let all through: what runs full over them is more than what falls beside air. m³/s;
   * empty if none is found then.
   */
  public OptionalDouble withoutPipeFrictionM3PerS() {
    return with(AtMost::withoutFriction);
  }

  /** A line without any loss that depends on its bore; its high points let all through. */
  public static Line withoutFriction(Line line) {
    List<Part> parts = new ArrayList<>(line.parts());
    parts.removeIf(
        part -> part instanceof HighPoint || (part instanceof Loss && part.bore().isPresent()));
    return line.withParts(parts).narrowed(WIDE);
  }

  /** Without the loss of fittings and check valves of its way, m³/s; empty without a balance. */
  public OptionalDouble withoutFittingsM3PerS() {
    return with(
        line ->
            line.withEach(Fitting.class, AtMost::freed).withEach(CheckValve.class, AtMost::freed));
  }

  private static Fitting freed(Fitting fitting) {
    return new Fitting(
        fitting.label(),
        fitting.count(),
        new VelocityHeadLoss(0, fitting.loss().bore()),
        fitting.coversChangeOfBore());
  }

  private static CheckValve freed(CheckValve valve) {
    return new CheckValve(valve.label(), 0, 0, valve.inside(), valve.swings());
  }

  /**
   * With every valve of its way wide open and every line beside it shut, m³/s; empty if other water
   * has to run.
   */
  public OptionalDouble withTheOthersShutM3PerS() {
    List<Line> changed = new ArrayList<>();
    for (Line line : state.network().lines()) {
      boolean isOwn = way.contains(line.name());
      changed.add(isOwn ? line.withEach(Valve.class, Valve::wideOpen) : line.shut());
    }
    return flowIn(state.network().withLines(changed));
  }

  /**
   * With the pumps of its way at their greatest speed and all others stopped, m³/s; empty without a
   * balance.
   *
   * @param fastest a pump at its greatest speed
   */
  public OptionalDouble withPumpsM3PerS(UnaryOperator<Pump> fastest) {
    Network changed = state.network();
    for (Placed<Pump> pump : changed.placed(Pump.class)) {
      LineName line = pump.line().name();
      Pump run = way.contains(line) ? fastest.apply(pump.part()) : pump.part().atSpeed(0);
      changed = changed.withPart(line, pump.index(), run);
    }
    return flowIn(changed);
  }

  private OptionalDouble with(UnaryOperator<Line> change) {
    Network built = state.network();
    return flowIn(built.withLines(way.stream().map(built::line).map(change).toList()));
  }

  private OptionalDouble flowIn(Network changed) {
    try {
      return OptionalDouble.of(SteadyStateFinder.find(changed).point(fall).outflowM3PerS());
    } catch (NoBalance | SearchFailed otherWaterMustRun) {
      return OptionalDouble.empty();
    }
  }
}
