package rillwright.solver.law.minor;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;

/**
 * Check valve: closed (no flow) while the head drop over it is below the cracking head; open, drop
 * = cracking head + K V²/2g. It lets nothing back.
 *
 * <p>Source: the sum of the spring's or flap's opening head and the fully open loss; common
 * practice, no source.
 *
 * @param crackingHeadM head drop at which it opens, m, 0 or more
 * @param open its loss when open
 */
public record CheckValveLoss(double crackingHeadM, VelocityHeadLoss open) implements HeadLaw {
  public CheckValveLoss {
    Require.atLeast("cracking head", crackingHeadM, 0, "m");
    Require.given("loss when open", open);
  }

  /** With K on the velocity head of a bore. */
  public CheckValveLoss(double crackingHeadM, double k, Bore bore) {
    this(crackingHeadM, new VelocityHeadLoss(k, bore));
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return crackingHeadM + open.headLossAt(flowM3PerS);
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return open.slopeAt(flowM3PerS);
  }

  @Override
  public double leastFlow() {
    return 0;
  }
}
