package rillwright.curves.chart.content;

/**
 * A flow that cannot be passed, drawn as an upright line.
 *
 * @param flowM3PerS m³/s, above 0
 * @param label what it is, in words
 */
public record FlowMark(double flowM3PerS, String label) {
  public FlowMark {
    Finite.check("flow limit", flowM3PerS);
    if (!(flowM3PerS > 0)) {
      throw new IllegalArgumentException("a flow limit is " + flowM3PerS + "; it must be above 0");
    }
  }
}
