package rillwright.solver.law.filter;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.HeadLaw;

/**
 * A clogged filter: the open share of it carries all the flow, h(Q) = h_clean(Q/(1 − c)).
 *
 * <p>Source: none; the part that is still open works as it did clean, common practice.
 *
 * @param clean the law when clean
 * @param openShare 1 − c, greater than 0 and up to 1
 */
public record CloggedLaw(HeadLaw clean, double openShare) implements HeadLaw {
  public CloggedLaw {
    Require.given("clean law", clean);
    Require.positive("open share", openShare, "");
    Require.between("open share", openShare, 0, 1, "");
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return clean.headLossAt(flowM3PerS / openShare);
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return clean.slopeAt(flowM3PerS / openShare) / openShare;
  }

  @Override
  public double leastFlow() {
    return clean.leastFlow() * openShare;
  }

  @Override
  public double greatestFlow() {
    return clean.greatestFlow() * openShare;
  }
}
