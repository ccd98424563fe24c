package rillwright.cli.study.section;

import java.util.List;
import java.util.Optional;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.solver.network.Network;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;

/**
 * A project along the ways of its water.
 *
 * @param job that it is about
 * @param network as it is built
 * @param state what flows where; empty without a balance
 * @param noBalance why there is none; empty too where a pump is still to be chosen
 * @param ways each line of the network stands in one of them; the way that climbs highest first
 */
public record Section(
    Job job,
    Network network,
    Optional<SteadyState> state,
    Optional<NoBalance.Reason> noBalance,
    List<Way> ways)
    implements Answer {
  public Section {
    ways = List.copyOf(ways);
  }

  /** Whether the water is under suction anywhere that is drawn. */
  public boolean hasSuction() {
    return ways.stream().flatMap(way -> way.stations().stream()).anyMatch(Station::isUnderSuction);
  }
}
