package rillwright.solver.study.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * What comes out of one sample.
 *
 * @param ending how its balance ended
 * @param flowsM3PerS out of the network at each fall, m³/s; none unless it ended well
 * @param served whether each fall gets its target, true where it has none; likewise
 */
record SampleOutcome(Ending ending, List<Double> flowsM3PerS, List<Boolean> served) {
  SampleOutcome {
    flowsM3PerS = List.copyOf(flowsM3PerS);
    served = List.copyOf(served);
  }

  /** How a sample's balance ends. */
  enum Ending {
    BALANCED,
    /** Balanced, with a chamber drawn down to its intake. */
    STARVED,
    /** The network has no balanced state. */
    NO_BALANCE,
    /** The search for the balance did not come to an end. */
    NOT_FOUND,
    /** The values contradict each other. */
    CONTRADICTION;

    boolean isBalanced() {
      return this == BALANCED || this == STARVED;
    }
  }

  /**
   * What comes out of a network; empty for values that contradict each other.
   *
   * @param like a state that its own is like; empty if there is none
   */
  static SampleOutcome of(
      Optional<Network> network, Optional<SteadyState> like, List<PointName> falls) {
    if (network.isEmpty()) {
      return without(Ending.CONTRADICTION);
    }
    try {
      Network drawn = network.get();
      return of(
          like.map(state -> SteadyStateFinder.find(drawn, state))
              .orElseGet(() -> SteadyStateFinder.find(drawn)),
          falls);
    } catch (NoBalance e) {
      return without(Ending.NO_BALANCE);
    } catch (SearchFailed e) {
      return without(Ending.NOT_FOUND);
    }
  }

  private static SampleOutcome without(Ending ending) {
    return new SampleOutcome(ending, List.of(), List.of());
  }

  private static SampleOutcome of(SteadyState state, List<PointName> falls) {
    List<Double> flows = new ArrayList<>();
    List<Boolean> served = new ArrayList<>();
    for (PointName fall : falls) {
      PointState point = state.point(fall);
      flows.add(point.outflowM3PerS());
      served.add(!point.isUnderTarget());
    }
    boolean starved = state.starves();
    return new SampleOutcome(starved ? Ending.STARVED : Ending.BALANCED, flows, served);
  }
}
