package rillwright.solver.stream;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;

/**
 * A network with its ways home.
 *
 * @param network basins at their level at rest
 * @param streams from falls to basins
 * @param boxes of falls, where known
 * @param loss what evaporates, where known
 */
public record StreamPlan(
    Network network,
    List<Stream> streams,
    Map<PointName, FallBox> boxes,
    Optional<WaterLoss> loss) {
  public StreamPlan {
    streams = List.copyOf(streams);
    boxes = Map.copyOf(boxes);
  }

  /**
   * The level at which a basin runs over, m: what the file says, else the top of its lowest
   * skimmer's mouth (common practice, no source); empty without either.
   */
  public OptionalDouble overflowM(Basin basin) {
    return basin.overflowM().isPresent()
        ? basin.overflowM()
        : network.skimmersOf(basin.name()).stream()
            .flatMapToDouble(skimmer -> skimmer.mouthTopM().stream())
            .min();
  }
}
