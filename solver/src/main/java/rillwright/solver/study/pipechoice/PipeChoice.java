package rillwright.solver.study.pipechoice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Sizes tried with their pumps.
 *
 * @param ranked by what pipe, pump and electricity cost over the years; by the pipe alone where all
 *     that meet the targets run one and the same pump
 * @param leftOut models with which the network has no balanced state with some size
 * @param trials how many pumps were tried in all of them together
 */
public record PipeChoice(List<RatedPipe> ranked, List<String> leftOut, int trials)
    implements RankedPipes<RatedPipe> {
  public PipeChoice {
    ranked = List.copyOf(ranked);
    leftOut = List.copyOf(leftOut);
  }

  /** Whether several meet the targets, all with one and the same pump at one speed. */
  public boolean isOfOnePump() {
    return isOfOnePump(ranked);
  }

  static boolean isOfOnePump(List<RatedPipe> rated) {
    List<RatedPipe> meeting = rated.stream().filter(RatedPipe::meetsTargets).toList();
    return meeting.size() > 1 && meeting.stream().allMatch(it -> it.hasThePumpOf(meeting.get(0)));
  }

  /**
   * Of those that meet every target, the one whose pipe costs least; empty if that is not known.
   */
  public Optional<RatedPipe> cheapestPipe() {
    return ranked.stream()
        .filter(rated -> rated.meetsTargets() && rated.option().materialCost().isPresent())
        .min(Comparator.comparingDouble(rated -> rated.option().materialCost().orElseThrow()));
  }
}
