package rillwright.solver.law.weir;

import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Gravity;

/**
 * Rectangular thin-plate weir, Q = (a + a′ h/p) ⅔ √(2g) (b + kb) he^1.5 with he = h + 1 mm.
 *
 * <p>Source: Kindsvater, C. E. and Carter, R. W. (1957), "Discharge characteristics of rectangular
 * thin-plate weirs", J. Hydraulics Division ASCE 83(6), as adopted by ISO 1438. The coefficients
 * against b/B are those of the standard's table (from memory; a fit by Fenton 2015 to its figures
 * differs by 1.4 % at most), joined by straight lines; for a weir as wide as its channel they are a
 * = 0.602, a′ = 0.075, kb = −0.9 mm. Made for heads from 30 mm.
 */
public final class ThinPlateWeir implements Weir {
  private static final double HEAD_ADDITION_M = 0.001;

  /**
   * Beyond this h/p, far outside the standard, a coefficient that falls with the head stays, so
   * that flow rises with head for every b/B.
   */
  private static final double FALLS_UP_TO_HEAD_RATIO = 100;

  /** Rows of b/B, a, a′, kb in m. */
  private static final double[][] BY_WIDTH_RATIO = {
    {0.0, 0.587, -0.0023, 0.0024},
    {0.2, 0.589, -0.0018, 0.0024},
    {0.4, 0.591, 0.0058, 0.0027},
    {0.6, 0.593, 0.018, 0.0036},
    {0.7, 0.595, 0.030, 0.0041},
    {0.8, 0.597, 0.045, 0.0042},
    {0.9, 0.599, 0.064, 0.0031},
    {1.0, 0.602, 0.075, -0.0009},
  };

  private final double widthM;
  private final double plateHeightM;
  private final double base;
  private final double perHeadRatio;
  private final double largestHeadRatio;
  private final double effectiveWidthM;

  /**
   * A thin plate across a box or channel.
   *
   * @param widthM b, m, more than 1 mm
   * @param plateHeightM p, crest above the floor upstream, m, greater than 0
   * @param channelWidthM B, m, at least b
   */
  public ThinPlateWeir(double widthM, double plateHeightM, double channelWidthM) {
    Require.above("width of the plate", widthM, 0.001, "m");
    Require.positive("height of the plate", plateHeightM, "m");
    Require.atLeast("width of the channel", channelWidthM, widthM, "m");
    this.widthM = widthM;
    this.plateHeightM = plateHeightM;
    double ratio = widthM / channelWidthM;
    this.base = coefficientAt(ratio, 1);
    this.perHeadRatio = coefficientAt(ratio, 2);
    this.largestHeadRatio = perHeadRatio < 0 ? FALLS_UP_TO_HEAD_RATIO : Double.POSITIVE_INFINITY;
    this.effectiveWidthM = widthM + coefficientAt(ratio, 3);
  }

  private static double coefficientAt(double widthRatio, int column) {
    int row = 1;
    while (row < BY_WIDTH_RATIO.length - 1 && widthRatio > BY_WIDTH_RATIO[row][0]) {
      row++;
    }
    double[] before = BY_WIDTH_RATIO[row - 1];
    double[] after = BY_WIDTH_RATIO[row];
    double t = (widthRatio - before[0]) / (after[0] - before[0]);
    return before[column] + t * (after[column] - before[column]);
  }

  @Override
  public double flowAt(double headM) {
    double he = EffectiveHead.at(headM, HEAD_ADDITION_M);
    return factor() * dischargeCoefficientAt(headM) * he * Math.sqrt(he);
  }

  @Override
  public double flowSlopeAt(double headM) {
    double he = EffectiveHead.at(headM, HEAD_ADDITION_M);
    double ofCoefficient =
        headM < largestHeadRatio * plateHeightM ? perHeadRatio / plateHeightM : 0;
    return factor()
        * Math.sqrt(he)
        * (ofCoefficient * he
            + 1.5 * dischargeCoefficientAt(headM) * EffectiveHead.slopeAt(headM, HEAD_ADDITION_M));
  }

  private double dischargeCoefficientAt(double headM) {
    return base + perHeadRatio * Math.min(headM / plateHeightM, largestHeadRatio);
  }

  private double factor() {
    return 2.0 / 3 * Math.sqrt(2 * Gravity.STANDARD_M_PER_S2) * effectiveWidthM;
  }

  @Override
  public double headAt(double flowM3PerS) {
    return HeadSearch.headAt(
        this, flowM3PerS, Math.pow(Math.max(flowM3PerS, 0) / (factor() * base), 2.0 / 3));
  }

  @Override
  public OptionalDouble brinkDepthAt(double flowM3PerS) {
    return OptionalDouble.of(BrinkRule.THIN_EDGE.depth(flowM3PerS / widthM, headAt(flowM3PerS)));
  }

  @Override
  public OptionalDouble crestWidthM() {
    return OptionalDouble.of(widthM);
  }
}
