package rillwright.solver.study.pipechoice;

import java.util.List;
import java.util.Optional;

/**
 * Sizes of pipe, ranked.
 *
 * @param ranked the best first: those that meet every wish by their cost, then the others
 */
public record RankedPipes<P extends SizedPipe>(List<P> ranked) {
  public RankedPipes {
    ranked = List.copyOf(ranked);
  }

  /** The choice with the least cost that meets every wish; empty if none does. */
  public Optional<P> leastCost() {
    return ranked.stream().filter(SizedPipe::does).findFirst();
  }

  /** The one after it. */
  public Optional<P> runnerUp() {
    return ranked.stream().filter(SizedPipe::does).skip(1).findFirst();
  }

  /** The next sizes up: larger, and none tried lies between; one for each line that is free. */
  public List<P> nextSizesUp(P from) {
    List<P> larger =
        ranked.stream().filter(rated -> rated.option().isLargerThan(from.option())).toList();
    return larger.stream()
        .filter(
            rated ->
                larger.stream().noneMatch(other -> rated.option().isLargerThan(other.option())))
        .toList();
  }
}
