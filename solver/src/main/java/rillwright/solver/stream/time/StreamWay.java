package rillwright.solver.stream.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import rillwright.solver.law.channel.UniformFlow;
import rillwright.solver.stream.ItemState;
import rillwright.solver.stream.Pool;
import rillwright.solver.stream.Reach;
import rillwright.solver.stream.StreamState;

/**
 * A stream as a chain of stores, each handing on what its depth lets go: a reach in cells by its
 * normal flow, a pool over its crest. Gravel fills from its cell and drains into it.
 *
 * @param name of the stream
 * @param links in order
 */
record StreamWay(String name, List<Link> links) {
  /** Reaches are cut into cells of this length or less, m. */
  private static final double LONGEST_CELL_M = 2.5;

  /** Gravel is mostly soaked at this share of the steady depth; a guess. */
  private static final double SOAKED = 0.25;

  /**
   * A store of the chain.
   *
   * @param pool what it is called, if it is a pool
   * @param store water surface and volume
   * @param emptyM its level before the start
   * @param outflow by its level, m³/s
   * @param gravelM3 water that drains from gravel under it
   * @param soakedM depth of water over it at which that gravel is mostly soaked: a guess
   */
  record Link(
      Optional<String> pool,
      Store store,
      double emptyM,
      DoubleUnaryOperator outflow,
      double gravelM3,
      double soakedM) {}

  /** A stream that is known at its steady flow. */
  static StreamWay of(StreamState state) {
    List<Link> links = new ArrayList<>();
    int number = 0;
    for (ItemState item : state.items()) {
      number++;
      if (item.item() instanceof Reach reach) {
        addCells(links, reach, item);
      } else if (item.item() instanceof Pool pool) {
        links.add(
            new Link(
                Optional.of(state.stream().name() + ", pool " + number),
                Tank.upright(pool.areaM2(), 0),
                0,
                head -> pool.weir().flowAt(Math.max(0, head)),
                0,
                1));
      }
    }
    return new StreamWay(state.stream().name(), links);
  }

  private static void addCells(List<Link> links, Reach reach, ItemState item) {
    int count = (int) Math.ceil(reach.lengthM() / LONGEST_CELL_M);
    ChannelCell cell = new ChannelCell(reach.section(), reach.lengthM() / count);
    double slope = reach.dropM() > 0 ? reach.slope() : slopeOfLevelWater(reach, item);
    double dry = cell.emptyDepthM();
    for (int i = 0; i < count; i++) {
      links.add(
          new Link(
              Optional.empty(),
              cell,
              dry,
              depth ->
                  depth <= dry
                      ? 0
                      : UniformFlow.flowM3PerS(reach.section(), reach.bed(), slope, depth),
              item.gravelM3() / count,
              SOAKED * item.depthM()));
    }
  }

  /** The slope at which a level reach carries its steady flow at its steady depth. */
  private static double slopeOfLevelWater(Reach reach, ItemState item) {
    double above = item.depthM() - item.criticalDepthM().orElse(0);
    return Math.max(1e-6, 2 * above / reach.lengthM());
  }
}
