package rillwright.cli.report.odds;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.report.conditions.Case;
import rillwright.cli.report.conditions.Cases;
import rillwright.solver.network.PointName;

/**
 * The condition and the fall with the least chance of a wish.
 *
 * @param chance 0 to 1
 */
public record WorstOdds(String condition, PointName fall, double chance) {

  /** The first of the worst; empty if nothing is wished or nothing has a balance. */
  public static Optional<WorstOdds> of(Cases<OddsAnswer> answer) {
    return answer.cases().stream()
        .flatMap(WorstOdds::listOf)
        .min(Comparator.comparingDouble(WorstOdds::chance));
  }

  private static Stream<WorstOdds> listOf(Case<OddsAnswer> one) {
    return one.answer().stream()
        .flatMap(told -> told.odds().falls().stream())
        .filter(fall -> fall.chance().isPresent())
        .map(fall -> new WorstOdds(one.condition(), fall.name(), fall.chance().getAsDouble()));
  }
}
