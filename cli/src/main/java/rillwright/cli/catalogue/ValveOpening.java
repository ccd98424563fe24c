package rillwright.cli.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.law.minor.ValveTravel;

/**
 * Loss of a valve at an opening for which it is published.
 *
 * @param travel the valve
 * @param openShare share of the handle's or stem's travel, 0 (shut) to 1 (open)
 * @param lossCoefficient K there, dimensionless
 */
public record ValveOpening(ValveTravel travel, double openShare, double lossCoefficient) {
  private static final String SOURCE =
      "a handbook's table of loss coefficients of fittings and valves (seen as a reproduction);"
          + " ball valve by the plug cock's values, its K fully open is common practice, no source";

  /** As project files name the valve: {@code ball}. */
  public String type() {
    return travel.word();
  }

  /** How far the handle is turned from open, degrees; empty if the valve has a stem that lifts. */
  public OptionalDouble degreesFromOpen() {
    return travel.turns()
        ? OptionalDouble.of(ValveTravel.degreesFromOpen(openShare))
        : OptionalDouble.empty();
  }

  /** Where the numbers are from. */
  public String source() {
    return SOURCE;
  }

  static List<ValveOpening> all() {
    return Arrays.stream(ValveTravel.values())
        .flatMap(
            travel ->
                travel.publishedPoints().stream()
                    .map(
                        point ->
                            new ValveOpening(travel, point.openShare(), point.lossCoefficient())))
        .toList();
  }
}
