package rillwright.cli.study.mend.trial;

import java.util.Comparator;
import java.util.List;
import rillwright.cli.study.mend.site.Need;

/**
 * Remedies that mend before others, those that mend more first; of the others the nearest first.
 * Then those that leave the crests, and so the look of the falls, as they are; among them what
 * takes neither money nor digging, then by cost over the years, what has no price last and by
 * effort.
 *
 * @param years over which cost counts
 * @param alike costs that differ by less are alike
 * @param needs that are to be met
 */
public record BestFirst(double years, double alike, List<Need> needs)
    implements Comparator<Remedy> {

  @Override
  public int compare(Remedy one, Remedy other) {
    return Comparator.comparing((Remedy it) -> !it.mends())
        .thenComparingInt(it -> it.mends() ? -it.metOf(needs) : 0)
        .thenComparingDouble(it -> it.mends() ? 0 : -it.leastShare())
        .thenComparing(it -> it.candidate().altersLook())
        .thenComparing(it -> !it.isFree())
        .thenComparingDouble(this::cost)
        .thenComparing(it -> it.candidate().work())
        .thenComparingDouble(it -> alike(knownCost(it)))
        .thenComparingInt(it -> it.candidate().steps().size())
        .thenComparingInt(it -> it.candidate().effort())
        .thenComparingDouble(this::knownCost)
        .compare(one, other);
  }

  private double cost(Remedy remedy) {
    return alike(remedy.costOver(years).orElse(Double.POSITIVE_INFINITY));
  }

  /** What is known of its cost. */
  private double knownCost(Remedy remedy) {
    return remedy.candidate().knownPrice() + years * remedy.costPerYear().orElse(0);
  }

  private double alike(double cost) {
    return alike > 0 ? Math.rint(cost / alike) : cost;
  }
}
