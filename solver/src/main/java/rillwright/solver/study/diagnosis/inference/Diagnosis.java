package rillwright.solver.study.diagnosis.inference;

import java.util.List;
import java.util.Optional;
import rillwright.solver.study.diagnosis.reading.Reading;

/**
 * What explains some readings.
 *
 * @param readings what was read
 * @param causes all causes, most likely first; probabilities sum to 1
 * @param firstGroup the likeliest that together have 80 % of the probability
 * @param separatedBy the reading that tells the first group apart best; empty if none does
 * @param next readings still to be taken, the one that tells most first
 */
public record Diagnosis(
    List<Reading> readings,
    List<Explanation> causes,
    List<Explanation> firstGroup,
    Optional<NextReading> separatedBy,
    List<NextReading> next) {
  private static final double UNNAMED_PASSES = 0.3;

  public Diagnosis {
    readings = List.copyOf(readings);
    causes = List.copyOf(causes);
    firstGroup = List.copyOf(firstGroup);
    next = List.copyOf(next);
  }

  /** Whether what was read asks for more than one cause: none of these leads or passes 30 %. */
  public boolean isUnexplained() {
    return !readings.isEmpty()
        && (causes.get(0).cause().isUnnamed()
            || causes.stream()
                .anyMatch(one -> one.cause().isUnnamed() && one.probability() > UNNAMED_PASSES));
  }
}
