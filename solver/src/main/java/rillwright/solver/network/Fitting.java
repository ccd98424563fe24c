package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.minor.VelocityHeadLoss;

/**
 * A fitting, or several alike.
 *
 * @param label what it is: "elbow 90", or "fitting"
 * @param count how many, 1 or more
 * @param lossCoefficient K of one, dimensionless, 0 or more
 * @param inside bore on whose velocity head K is taken
 */
public record Fitting(String label, int count, double lossCoefficient, Bore inside)
    implements Part {
  public Fitting {
    Require.given("label of a fitting", label);
    Require.atLeast("count of fittings", count, 1);
    Require.atLeast("loss coefficient", lossCoefficient, 0, "");
    Require.given("bore of a fitting", inside);
  }

  @Override
  public String kind() {
    return "fitting";
  }

  @Override
  public Optional<Bore> bore() {
    return Optional.of(inside);
  }

  @Override
  public HeadLaw law(Setting setting) {
    return new VelocityHeadLoss(count * lossCoefficient, inside);
  }

  @Override
  public Fitting narrowed(double factor) {
    return new Fitting(label, count, lossCoefficient, inside.times(factor));
  }
}
