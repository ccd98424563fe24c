package rillwright.solver.study.diagnosis.inference;

import java.util.List;
import java.util.Optional;
import rillwright.solver.study.diagnosis.pair.PairExplanation;
import rillwright.solver.study.diagnosis.reading.Reading;

/**
 * What explains some readings.
 *
 * @param readings what was read
 * @param causes all causes that were tried, most likely first; probabilities sum to 1
 * @param firstGroup the likeliest that together have 80 % of the probability
 * @param separatedBy the reading that tells the first group apart best; empty if none does
 * @param next readings still to be taken, the one that tells most first
 * @param pairs two causes at once, where they are likelier than single ones or likely in
 *     themselves, likeliest first
 * @param pairsLead whether the pairs are far likelier than any single cause
 * @param untried how many more causes there are at their places that were not tried, because the
 *     job is large; what speaks for them counts to what no cause describes
 */
public record Diagnosis(
    List<Reading> readings,
    List<Explanation> causes,
    List<Explanation> firstGroup,
    Optional<NextReading> separatedBy,
    List<NextReading> next,
    List<PairExplanation> pairs,
    boolean pairsLead,
    int untried) {
  public Diagnosis {
    readings = List.copyOf(readings);
    causes = List.copyOf(causes);
    firstGroup = List.copyOf(firstGroup);
    next = List.copyOf(next);
    pairs = List.copyOf(pairs);
  }

  /** Whether anything that is named explains what was read: a cause leads, or a pair does. */
  public boolean isExplained() {
    return readings.isEmpty() || pairsLead || !causes.get(0).cause().isUnnamed();
  }
}
