package rillwright.solver.law.weir;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.HeadLaw;

/**
 * The head above its crest that a weir needs at a flow; nothing comes back over it.
 *
 * @param weir the crest
 */
public record WeirLaw(Weir weir) implements HeadLaw {
  public WeirLaw {
    Require.given("weir", weir);
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return weir.headAt(flowM3PerS);
  }

  /** Infinite at no flow. */
  @Override
  public double slopeAt(double flowM3PerS) {
    return 1 / weir.flowSlopeAt(weir.headAt(flowM3PerS));
  }

  @Override
  public double leastFlow() {
    return 0;
  }
}
