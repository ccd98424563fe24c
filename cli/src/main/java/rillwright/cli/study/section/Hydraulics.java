package rillwright.cli.study.section;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.ShutOffHeads;
import rillwright.solver.reading.WaterAtRest;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/**
 * Heads along the lines of a network: running, at rest and against shut valves.
 *
 * @param network as it is built
 * @param state running; empty without a balance
 * @param rest with the pumps off; empty where nothing is pumped or that has no balance
 * @param shutOff against shut valves; empty without a balance
 */
record Hydraulics(
    Network network,
    Optional<SteadyState> state,
    Optional<WaterAtRest> rest,
    Optional<ShutOffHeads> shutOff) {

  static Hydraulics of(Network network, Optional<SteadyState> state) {
    Optional<WaterAtRest> rest = Optional.empty();
    if (state.isPresent() && network.isPumped()) {
      try {
        rest = Optional.of(WaterAtRest.of(network));
      } catch (NoBalance drawsNeedThePumps) {
        rest = Optional.empty();
      }
    }
    return new Hydraulics(network, state, rest, state.map(ShutOffHeads::of));
  }

  /** Total head at a point as a line that water enters or leaves there sees it, m. */
  OptionalDouble headM(PointName point, boolean drawn) {
    Optional<PointState> at = state.map(found -> found.point(point));
    return at.map(found -> drawn ? found.drawnHeadM() : found.headM())
        .orElse(OptionalDouble.empty());
  }

  /** Whether it is known that nothing runs out at a point. */
  boolean isDry(PointName point) {
    return state.filter(found -> found.point(point).outflowM3PerS() <= 0).isPresent();
  }

  /** Total head before a part of a line, in the direction of the line, m. */
  OptionalDouble headBeforeM(Line line, int index) {
    return state
        .map(found -> found.line(line.name()).parts().get(index).headBeforeM())
        .orElse(OptionalDouble.empty());
  }

  /** Total head after a part of a line, in the direction of the line, m. */
  OptionalDouble headAfterM(Line line, int index) {
    Optional<LineState> found = state.map(at -> at.line(line.name()));
    if (found.isEmpty()) {
      return OptionalDouble.empty();
    }
    PartState part = found.get().parts().get(index);
    if (part.headBeforeM().isPresent() && part.headLossM().isPresent()) {
      return OptionalDouble.of(part.headBeforeM().getAsDouble() - part.headLossM().getAsDouble());
    }
    return found.get().flowM3PerS() == 0 ? headAtRestAfterM(line, index) : OptionalDouble.empty();
  }

  /** In a line without flow the head does not change from one part to the next. */
  private OptionalDouble headAtRestAfterM(Line line, int index) {
    return index + 1 < line.parts().size() ? headBeforeM(line, index + 1) : headM(line.to(), false);
  }

  /** Total head with the velocity head of a bore taken off, m. */
  OptionalDouble gaugeHeadM(OptionalDouble headM, Line line, Optional<Bore> bore) {
    double flow = state.map(found -> found.line(line.name()).flowM3PerS()).orElse(0.0);
    double velocityHead = bore.map(it -> it.velocityHeadAt(flow)).orElse(0.0);
    return headM.isPresent() ? OptionalDouble.of(headM.getAsDouble() - velocityHead) : headM;
  }

  /** Where water stands before a part of a line with the pumps off, m. */
  OptionalDouble restHeadM(Line line, int index) {
    return rest.map(water -> water.headBeforeM(line.name(), index)).orElse(OptionalDouble.empty());
  }

  /** Where water stands at a point with the pumps off, m. */
  OptionalDouble restHeadM(PointName point) {
    return rest.map(water -> water.levelM(point)).orElse(OptionalDouble.empty());
  }

  /** Head before a part of a line against shut valves behind it, m. */
  OptionalDouble shutOffHeadM(Line line, int index) {
    return shutOff.map(heads -> heads.headM(line, index)).orElse(OptionalDouble.empty());
  }
}
