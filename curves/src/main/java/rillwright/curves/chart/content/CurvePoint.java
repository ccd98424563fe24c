package rillwright.curves.chart.content;

/**
 * A point of a head curve.
 *
 * @param flowM3PerS m³/s, 0 or more, finite
 * @param headM m, finite
 */
public record CurvePoint(double flowM3PerS, double headM) {
  public CurvePoint {
    Finite.check("flow", flowM3PerS);
    Finite.check("head", headM);
    if (flowM3PerS < 0) {
      throw new IllegalArgumentException(
          "a curve's flow is " + flowM3PerS + "; it must be 0 or more");
    }
  }
}
