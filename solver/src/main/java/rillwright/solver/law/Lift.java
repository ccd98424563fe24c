package rillwright.solver.law;

/**
 * The law of a head given at any flow: what is added to a pump to see how much it lacks.
 *
 * @param headM the head, m, finite
 */
public record Lift(double headM) implements HeadLaw {
  public Lift {
    if (!Double.isFinite(headM)) {
      throw new IllegalArgumentException("a lift is " + headM + " m; it must be finite");
    }
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return -headM;
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return 0;
  }
}
