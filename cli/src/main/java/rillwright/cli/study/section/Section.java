package rillwright.cli.study.section;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;

/**
 * A project along the ways of its water.
 *
 * @param job that it is about
 * @param condition of the site in which it is; empty as written
 * @param network as it is built
 * @param state what flows where; empty without a balance
 * @param noBalance why there is none; empty too where a pump is still to be chosen
 * @param ways each line of the network stands in one of them; the way that climbs highest first
 */
public record Section(
    Job job,
    Optional<String> condition,
    Network network,
    Optional<SteadyState> state,
    Optional<NoBalance.Reason> noBalance,
    List<Way> ways)
    implements Answer {
  public Section {
    ways = List.copyOf(ways);
  }

  /**
   * The height of a point, m: of open water its level, of a fall its crest; empty where the file
   * does not give it.
   */
  public OptionalDouble heightM(Point point) {
    OptionalDouble known = Elevations.knownM(point);
    if (known.isPresent() || point.heldHeadM().isPresent()) {
      return known.isPresent() ? known : point.heldHeadM();
    }
    return point instanceof Chamber chamber ? OptionalDouble.of(chamber.intakeM()) : known;
  }

  /** Whether the file gives the elevation of any place but open water. */
  public boolean hasElevations() {
    return ways.stream()
        .flatMap(way -> way.stations().stream())
        .filter(
            station ->
                !(station.subject() instanceof Station.AtPoint at)
                    || at.point().heldHeadM().isEmpty())
        .anyMatch(station -> station.before().source() != Measures.Source.ASSUMED);
  }

  /** Whether the water is under suction anywhere that is drawn. */
  public boolean hasSuction() {
    return ways.stream().flatMap(way -> way.stations().stream()).anyMatch(Station::isUnderSuction);
  }
}
