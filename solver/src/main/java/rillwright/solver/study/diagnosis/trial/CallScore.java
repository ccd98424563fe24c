package rillwright.solver.study.diagnosis.trial;

import java.util.List;

/**
 * How good the answer to one call was.
 *
 * @param cause name of what was wrong
 * @param groupHolds whether the first group held it
 * @param groupSize how many the first group held
 * @param prior how likely it was before any reading
 * @param truth how likely it was by the readings
 * @param afterAdvice how likely it was after the reading that was advised
 * @param afterRandom how likely it was after a random reading
 * @param afterTwoAdvised the same after following the advice twice
 * @param afterTwoRandom the same after two random readings or looks
 * @param promisedBits what the advised reading was to tell
 * @param realisedBits what it gave
 * @param entries the probability of every cause and whether it was the one
 */
public record CallScore(
    String cause,
    boolean groupHolds,
    int groupSize,
    double prior,
    double truth,
    double afterAdvice,
    double afterRandom,
    double afterTwoAdvised,
    double afterTwoRandom,
    double promisedBits,
    double realisedBits,
    List<Entry> entries) {
  public CallScore {
    entries = List.copyOf(entries);
  }

  /** A probability that was stated and whether it came true. */
  public record Entry(double probability, boolean hit) {}
}
