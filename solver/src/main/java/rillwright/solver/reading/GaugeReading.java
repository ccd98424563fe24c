package rillwright.solver.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.LineName;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.water.Water;

/**
 * What a gauge shows.
 *
 * @param line in which it sits
 * @param gauge which
 * @param pressurePa Pa above the air's; empty where it is cut off on both sides
 */
public record GaugeReading(LineName line, Gauge gauge, OptionalDouble pressurePa) {

  /** All gauges in a steady state, in the order of the network. */
  public static List<GaugeReading> listIn(SteadyState state) {
    List<GaugeReading> readings = new ArrayList<>();
    for (LineState line : state.lines()) {
      for (PartState part : line.parts()) {
        if (part.part() instanceof Gauge gauge) {
          readings.add(
              new GaugeReading(
                  line.line().name(), gauge, pressurePa(gauge, part, state.network().water())));
        }
      }
    }
    return readings;
  }

  /** What a gauge shows, Pa above the air's; empty where nothing determines it. */
  public static OptionalDouble pressurePa(Gauge gauge, PartState state, Water water) {
    OptionalDouble head = state.headBeforeM();
    return head.isPresent()
        ? OptionalDouble.of(gauge.pressurePa(head.getAsDouble(), state.flowM3PerS(), water))
        : head;
  }
}
