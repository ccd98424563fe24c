package rillwright.solver.study.uncertainty;

import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.TruncatedNormalDistribution;

/**
 * Normal about a middle, cut off at what is valid: of a normal quantity what lies between two
 * bounds, made whole again.
 */
public final class CutNormal implements Distribution {
  private final ContinuousDistribution cut;

  /**
   * A cut-off normal quantity.
   *
   * @param middle mean before it is cut, between the bounds
   * @param standardDeviation before it is cut, greater than 0
   * @param least lower bound
   * @param greatest upper bound, above it
   */
  public CutNormal(double middle, double standardDeviation, double least, double greatest) {
    if (!(standardDeviation > 0) || !(least <= middle && middle <= greatest && least < greatest)) {
      throw new IllegalArgumentException(
          "a quantity is %s, give or take %s, between %s and %s"
              .formatted(middle, standardDeviation, least, greatest));
    }
    this.cut = TruncatedNormalDistribution.of(middle, standardDeviation, least, greatest);
  }

  @Override
  public double quantile(double chance) {
    return cut.inverseCumulativeProbability(chance);
  }
}
