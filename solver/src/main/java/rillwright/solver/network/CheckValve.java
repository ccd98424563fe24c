package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.minor.CheckValveLoss;

/**
 * A valve that lets no water back.
 *
 * @param label what it is: "swing check valve"
 * @param crackingHeadM head drop at which it opens, m, 0 or more
 * @param lossCoefficient K when open, dimensionless, 0 or more
 * @param inside bore on whose velocity head K is taken
 * @param swings whether it is a swing check valve, whose disc the water must hold open
 */
public record CheckValve(
    String label, double crackingHeadM, double lossCoefficient, Bore inside, boolean swings)
    implements Part {
  public CheckValve {
    Require.given("label of a check valve", label);
    Require.atLeast("cracking head", crackingHeadM, 0, "m");
    Require.atLeast("loss coefficient", lossCoefficient, 0, "");
    Require.given("bore of a check valve", inside);
  }

  /** One whose disc is not known to swing. */
  public CheckValve(String label, double crackingHeadM, double lossCoefficient, Bore inside) {
    this(label, crackingHeadM, lossCoefficient, inside, false);
  }

  @Override
  public String kind() {
    return "check valve";
  }

  @Override
  public Optional<Bore> bore() {
    return Optional.of(inside);
  }

  @Override
  public HeadLaw law(Setting setting) {
    return new CheckValveLoss(crackingHeadM, lossCoefficient, inside);
  }

  @Override
  public CheckValve narrowed(double factor) {
    return new CheckValve(label, crackingHeadM, lossCoefficient, inside.times(factor), swings);
  }
}
