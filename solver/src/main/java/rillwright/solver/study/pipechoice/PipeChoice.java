package rillwright.solver.study.pipechoice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Pipes tried and ranked.
 *
 * @param ranked the best first
 * @param leftOut models with which the network has no balanced state with some size
 * @param trials how many pumps were tried in all of them together
 */
public record PipeChoice(List<RatedPipe> ranked, List<String> leftOut, int trials) {
  public PipeChoice {
    ranked = List.copyOf(ranked);
    leftOut = List.copyOf(leftOut);
  }

  private RankedPipes<RatedPipe> ranking() {
    return new RankedPipes<>(ranked);
  }

  /** The choice with the least cost over the years that meets every wish; empty if none does. */
  public Optional<RatedPipe> leastCost() {
    return ranking().leastCost();
  }

  /** The one after it. */
  public Optional<RatedPipe> runnerUp() {
    return ranking().runnerUp();
  }

  /** Of those that meet every wish, the one whose pipe costs least; empty if that is not known. */
  public Optional<RatedPipe> cheapestPipe() {
    return ranked.stream()
        .filter(rated -> rated.does() && rated.option().materialCost().isPresent())
        .min(Comparator.comparingDouble(rated -> rated.option().materialCost().orElseThrow()));
  }

  /** The next sizes up: larger, and none tried lies between; one for each line that is free. */
  public List<RatedPipe> nextSizesUp(RatedPipe from) {
    return ranking().nextSizesUp(from);
  }
}
