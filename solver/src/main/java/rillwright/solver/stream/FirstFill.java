package rillwright.solver.stream;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Run;
import rillwright.solver.steady.LineState;

/**
 * Water that the first day takes besides what fills a basin to its level at rest.
 *
 * @param volumeM3 by item, m³, in their order; items of nothing are left out
 */
public record FirstFill(Map<Item, Double> volumeM3) {

  /** What is filled. */
  public enum Item {
    /** Water in transit: it comes back at each stop. */
    TRANSIT,
    /** Pools below their crests. */
    POOLS,
    /** What of the water in gravel does not drain. */
    GRAVEL,
    /** Pipes that stay full. */
    PIPES,
    /** Boxes of falls below their crests. */
    BOXES,
    /** Chambers, from the basin's level at rest to theirs while running: negative if they fall. */
    CHAMBERS
  }

  public FirstFill {
    EnumMap<Item, Double> copy = new EnumMap<>(Item.class);
    volumeM3.forEach(
        (item, volume) -> {
          if (volume != 0) {
            copy.put(item, volume);
          }
        });
    volumeM3 = Collections.unmodifiableMap(copy);
  }

  /** What a basin has to fill when its pumps run for the first time. */
  static FirstFill of(RunningWater running, Basin basin) {
    WaterSources sources = new WaterSources(running.state());
    Transit transit = running.transitFrom(basin.name());
    double pools = 0;
    double gravel = 0;
    for (StreamState stream : running.streams()) {
      if (sources.isFrom(basin.name(), stream.stream().from())) {
        pools += stream.standingM3();
        gravel += stream.undrainedM3();
      }
    }
    double pipes = 0;
    for (LineState line : running.state().lines()) {
      PointName start = line.flowM3PerS() < 0 ? line.line().to() : line.line().from();
      if (line.flowM3PerS() != 0 && sources.isFrom(basin.name(), start)) {
        pipes +=
            line.line().placed(Run.class).stream().mapToDouble(run -> run.part().volumeM3()).sum();
      }
    }
    double boxes = 0;
    for (Fall fall : running.state().network().points(Fall.class)) {
      FallBox box = running.plan().boxes().get(fall.name());
      boolean runs = running.state().point(fall.name()).outflowM3PerS() > 0;
      if (box != null && runs && sources.isFrom(basin.name(), fall.name())) {
        boxes += box.areaM2() * box.depthM();
      }
    }
    return new FirstFill(
        Map.of(
            Item.TRANSIT,
            transit.totalM3(),
            Item.POOLS,
            pools,
            Item.GRAVEL,
            gravel,
            Item.PIPES,
            Math.max(0, pipes - transit.pipesM3()),
            Item.BOXES,
            boxes,
            Item.CHAMBERS,
            -running.leftChambersM3(basin)));
  }

  /** All of it, m³. */
  public double totalM3() {
    return volumeM3.values().stream().mapToDouble(Double::doubleValue).sum();
  }
}
