package rillwright.solver.finding;

import java.util.List;
import java.util.stream.IntStream;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Pump;
import rillwright.solver.pumping.PumpSuction;

/** Pumps that stand above the water and do not prime themselves; common practice, no source. */
final class SuctionLiftDetector implements NetworkDetector {

  @Override
  public List<Finding> findIn(Network network) {
    return network.lines().stream()
        .flatMap(
            line ->
                IntStream.range(0, line.parts().size())
                    .filter(place -> line.parts().get(place) instanceof Pump)
                    .mapToObj(place -> PumpSuction.liftM(network, line, place))
                    .flatMap(lift -> lift.stream().mapToObj(climb -> suctionLift(line, climb))))
        .toList();
  }

  private static Finding suctionLift(Line line, double climbM) {
    String at = line.name().value();
    return Finding.of(
            Severity.ADVICE,
            "suction-lift",
            at,
            "The suction of the pump in \"" + at + "\" climbs ")
        .length("aboveWater", climbM)
        .then(
            " above the water: fill pump and suction pipe before a start unless they are still"
                + " full."
                + " A leaking foot valve, or air that a joint lets in, loses the prime (common"
                + " practice, no source).");
  }
}
