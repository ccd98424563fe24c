package rillwright.solver.law;

/**
 * The head that a part of a line takes at a flow.
 *
 * <p>A law is strictly increasing in flow and has a continuous derivative on the flows that it
 * allows, {@link #leastFlow()} to {@link #greatestFlow()}. At the least flow it holds any head loss
 * up to {@code headLossAt(leastFlow)}; at the greatest flow it holds any head loss from {@code
 * headLossAt(greatestFlow)} upwards. That is all that the balance needs: a check valve is a law
 * whose least flow is 0, a shut valve one whose least and greatest flow are both 0.
 *
 * <p>The slope may be 0 or infinite at no flow; the balance copes.
 */
public interface HeadLaw {

  /**
   * Head loss in the direction of positive flow, m. A pump's is negative.
   *
   * @param flowM3PerS flow, m³/s, from {@link #leastFlow()} to {@link #greatestFlow()}
   */
  double headLossAt(double flowM3PerS);

  /**
   * Derivative of the head loss by the flow, s/m²; 0 or more.
   *
   * @param flowM3PerS flow, m³/s, from {@link #leastFlow()} to {@link #greatestFlow()}
   */
  double slopeAt(double flowM3PerS);

  /**
   * The least flow that the law lets through, m³/s: negative infinity, or 0 for a part that lets no
   * water back.
   */
  default double leastFlow() {
    return Double.NEGATIVE_INFINITY;
  }

  /** The greatest flow that the law lets through, m³/s; positive infinity for most. */
  default double greatestFlow() {
    return Double.POSITIVE_INFINITY;
  }
}
