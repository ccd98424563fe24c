package rillwright.solver.law.weir;

import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Gravity;

/**
 * Rectangular crest with a constant coefficient, Q = C b h^1.5.
 *
 * <p>Source: Poleni's formula (1717) in the form of any hydraulics text; the coefficients by lip
 * are common practice.
 *
 * @param coefficient C, m^½/s, greater than 0
 * @param widthM b, the width that runs wet, m, greater than 0
 * @param brink how thick the sheet is at the brink
 */
public record PowerWeir(double coefficient, double widthM, BrinkRule brink) implements Weir {
  public PowerWeir {
    Require.positive("coefficient of the crest", coefficient, "m^½/s");
    Require.positive("width of the crest", widthM, "m");
    Require.given("brink rule", brink);
  }

  /** With a discharge coefficient, Q = ⅔ Cd b √(2g) h^1.5. */
  public static PowerWeir ofDischargeCoefficient(double dischargeCoefficient, double widthM) {
    double c = 2.0 / 3 * dischargeCoefficient * Math.sqrt(2 * Gravity.STANDARD_M_PER_S2);
    return new PowerWeir(c, widthM, BrinkRule.THIN_EDGE);
  }

  @Override
  public double flowAt(double headM) {
    return coefficient * widthM * headM * Math.sqrt(headM);
  }

  @Override
  public double flowSlopeAt(double headM) {
    return 1.5 * coefficient * widthM * Math.sqrt(headM);
  }

  @Override
  public double headAt(double flowM3PerS) {
    double ratio = Math.cbrt(flowM3PerS / (coefficient * widthM));
    return ratio * ratio;
  }

  @Override
  public OptionalDouble brinkDepthAt(double flowM3PerS) {
    return OptionalDouble.of(brink.depth(flowM3PerS / widthM, headAt(flowM3PerS)));
  }

  @Override
  public OptionalDouble crestWidthM() {
    return OptionalDouble.of(widthM);
  }
}
