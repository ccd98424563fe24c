package rillwright.solver.law;

/** The law of what is shut: no flow either way, and it holds any head. */
public record Shut() implements HeadLaw {
  @Override
  public double headLossAt(double flowM3PerS) {
    return 0;
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return 0;
  }

  @Override
  public double leastFlow() {
    return 0;
  }

  @Override
  public double greatestFlow() {
    return 0;
  }
}
