package rillwright.cli.study.odds;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.Cases;
import rillwright.solver.network.PointName;

/**
 * The condition and the fall with the least chance of a target.
 *
 * @param chance 0 to 1
 */
public record WorstOdds(String condition, PointName fall, double chance) {

  /** The first of the worst; empty if there is no target or nothing has a balance. */
  public static Optional<WorstOdds> of(Cases<OddsAnswer> answer) {
    return answer.cases().stream()
        .flatMap(WorstOdds::listOf)
        .min(Comparator.comparingDouble(WorstOdds::chance));
  }

  /** The first of the worst of each fall with a target, in the order of the falls. */
  public static List<WorstOdds> listOf(Cases<OddsAnswer> answer) {
    Map<PointName, WorstOdds> worst = new LinkedHashMap<>();
    answer.cases().stream()
        .flatMap(WorstOdds::listOf)
        .forEach(
            one ->
                worst.merge(
                    one.fall(), one, (old, other) -> other.chance() < old.chance() ? other : old));
    return List.copyOf(worst.values());
  }

  private static Stream<WorstOdds> listOf(Case<OddsAnswer> one) {
    return one.answer().stream()
        .flatMap(shown -> shown.odds().falls().stream())
        .filter(fall -> fall.chance().isPresent())
        .map(fall -> new WorstOdds(one.condition(), fall.name(), fall.chance().getAsDouble()));
  }
}
