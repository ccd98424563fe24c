package rillwright.solver.study.pipechoice;

import java.util.List;
import java.util.Optional;

/** Sizes of pipe, ranked. */
public interface RankedPipes<P extends SizedPipe> {
  /** The best first: those that meet every target by their cost, then the others. */
  List<P> ranked();

  /** The choice with the least cost that meets every target; empty if none does. */
  default Optional<P> leastCost() {
    return ranked().stream().filter(SizedPipe::meetsTargets).findFirst();
  }

  /** The one after it. */
  default Optional<P> runnerUp() {
    return ranked().stream().filter(SizedPipe::meetsTargets).skip(1).findFirst();
  }

  /** The next sizes up: larger, and none tried lies between; one for each line that is free. */
  default List<P> nextSizesUp(P from) {
    List<P> larger =
        ranked().stream().filter(rated -> rated.option().isLargerThan(from.option())).toList();
    return larger.stream()
        .filter(
            rated ->
                larger.stream().noneMatch(other -> rated.option().isLargerThan(other.option())))
        .toList();
  }
}
