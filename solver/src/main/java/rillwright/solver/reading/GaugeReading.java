package rillwright.solver.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Placed;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.water.Water;

/**
 * What a gauge shows.
 *
 * @param line in which it sits
 * @param partIndex its place among the line's parts, from 0
 * @param gauge which
 * @param pressurePa Pa above the air's; empty where it is cut off on both sides
 */
public record GaugeReading(LineName line, int partIndex, Gauge gauge, OptionalDouble pressurePa) {

  private interface Heads {
    OptionalDouble headBefore(LineState line, int index);
  }

  /** All gauges in a steady state, in the order of the network. */
  public static List<GaugeReading> listIn(SteadyState state) {
    return list(state, (line, index) -> line.parts().get(index).headBeforeM());
  }

  /** The same with the heads of standing water, where the balance leaves them undetermined. */
  public static List<GaugeReading> listStanding(SteadyState state) {
    StandingWater standing = new StandingWater(state);
    return list(state, (line, index) -> standing.headBefore(line.line().name(), index));
  }

  private static List<GaugeReading> list(SteadyState state, Heads heads) {
    List<GaugeReading> readings = new ArrayList<>();
    for (Placed<Gauge> gauge : state.network().placed(Gauge.class)) {
      LineState line = state.line(gauge.line().name());
      OptionalDouble pressure =
          pressurePa(
              gauge.part(),
              heads.headBefore(line, gauge.index()),
              line.flowM3PerS(),
              state.network().water());
      readings.add(new GaugeReading(line.line().name(), gauge.index(), gauge.part(), pressure));
    }
    return readings;
  }

  /** What a gauge shows, Pa above the air's; empty where nothing determines it. */
  public static OptionalDouble pressurePa(Gauge gauge, PartState state, Water water) {
    return pressurePa(gauge, state.headBeforeM(), state.flowM3PerS(), water);
  }

  private static OptionalDouble pressurePa(
      Gauge gauge, OptionalDouble headM, double flowM3PerS, Water water) {
    return headM.isPresent()
        ? OptionalDouble.of(gauge.pressurePa(headM.getAsDouble(), flowM3PerS, water))
        : headM;
  }
}
