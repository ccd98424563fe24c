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
 * @param loss what one takes
 * @param coversChangeOfBore whether that takes in the change of bore between the runs beside it
 */
public record Fitting(String label, int count, VelocityHeadLoss loss, boolean coversChangeOfBore)
    implements Part {
  public Fitting {
    Require.given("label of a fitting", label);
    Require.atLeast("count of fittings", count, 1);
    Require.given("loss of a fitting", loss);
  }

  /** Fittings that stand in one bore, with K on its velocity head. */
  public Fitting(String label, int count, double lossCoefficient, Bore inside) {
    this(label, count, new VelocityHeadLoss(lossCoefficient, inside), false);
  }

  @Override
  public String kind() {
    return "fitting";
  }

  @Override
  public Optional<Bore> bore() {
    return Optional.of(loss.bore());
  }

  @Override
  public HeadLaw law(Setting setting) {
    return loss.times(count);
  }

  @Override
  public Fitting narrowed(double factor) {
    return new Fitting(label, count, loss.narrowed(factor), coversChangeOfBore);
  }
}
