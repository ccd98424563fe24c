package rillwright.cli.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.ValveLoss;
import rillwright.solver.law.minor.ValveTravel;

/**
 * Loss of a valve at an opening for which it is published.
 *
 * @param travel the valve
 * @param size the size for which it holds, {@code any} if for all
 * @param bore that size's bore; empty if for all
 * @param opening share of the handle's or stem's travel, 0 (shut) to 1 (open)
 * @param lossCoefficient K there, dimensionless
 * @param source where the numbers are from
 */
public record ValveOpening(
    ValveTravel travel,
    String size,
    Optional<Bore> bore,
    double opening,
    double lossCoefficient,
    String source)
    implements Sized {
  private static final String BY_OPENING =
      "a handbook's table of loss coefficients of fittings and valves (seen as a reproduction);"
          + " ball valve by the plug cock's values";

  /** As project files name the valve: {@code ball}. */
  @Override
  public String type() {
    return travel.word();
  }

  /** How far the handle is turned from open, degrees; empty if the valve has a stem that lifts. */
  public OptionalDouble degreesFromOpen() {
    return travel.turns()
        ? OptionalDouble.of(ValveTravel.degreesFromOpen(opening))
        : OptionalDouble.empty();
  }

  /** Of an open valve that has this loss at any opening. */
  ValveLoss loss() {
    return new ValveLoss(travel, lossCoefficient);
  }

  /** An open valve. */
  static ValveOpening ofOpen(TableRow row, RoughFriction.SizedLoss loss) {
    ValveTravel travel =
        Arrays.stream(ValveTravel.values())
            .filter(it -> it.word().equals(row.text("type")))
            .findFirst()
            .orElseThrow();
    return new ValveOpening(
        travel, loss.size(), loss.bore(), 1, loss.lossCoefficient(), row.source());
  }

  /** All openings, each valve's from open towards shut. */
  static List<ValveOpening> list(List<ValveOpening> open) {
    return Arrays.stream(ValveTravel.values())
        .flatMap(
            travel ->
                Stream.concat(
                    open.stream().filter(it -> it.travel() == travel),
                    travel.publishedPoints().stream()
                        .filter(point -> point.opening() < 1)
                        .map(point -> partly(travel, point))))
        .toList();
  }

  private static ValveOpening partly(ValveTravel travel, ValveTravel.TravelPoint point) {
    return new ValveOpening(
        travel, "any", Optional.empty(), point.opening(), point.lossCoefficient(), BY_OPENING);
  }
}
