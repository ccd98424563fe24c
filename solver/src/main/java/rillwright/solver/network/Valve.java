package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.Shut;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.law.minor.VelocityHeadLoss;

/**
 * A valve that somebody sets.
 *
 * @param label what it is: "ball valve"
 * @param loss its loss: given, or by how far it is open
 * @param inside bore on whose velocity head K is taken
 * @param adjustable whether falls may be balanced with it
 */
public record Valve(String label, Setpoint loss, Bore inside, boolean adjustable) implements Part {

  /** How a valve's loss is known. */
  public sealed interface Setpoint {
    /** Loss coefficient K, dimensionless; infinite when shut. */
    double lossCoefficient();
  }

  /** A loss coefficient from the file. */
  public record GivenLoss(double lossCoefficient) implements Setpoint {}

  /**
   * A loss by opening.
   *
   * @param travel published loss against opening
   * @param openShare share of the handle's travel, 0 (shut) to 1
   */
  public record Opening(ValveTravel travel, double openShare) implements Setpoint {
    @Override
    public double lossCoefficient() {
      return travel.lossCoefficientAt(openShare);
    }
  }

  /** The same valve, shut. */
  public Valve shut() {
    return new Valve(label, new GivenLoss(Double.POSITIVE_INFINITY), inside, adjustable);
  }

  @Override
  public String kind() {
    return "valve";
  }

  @Override
  public Optional<Bore> bore() {
    return Optional.of(inside);
  }

  /** Whether it lets nothing through. */
  public boolean isShut() {
    return Double.isInfinite(loss.lossCoefficient());
  }

  @Override
  public HeadLaw law(Setting setting) {
    return isShut() ? new Shut() : new VelocityHeadLoss(loss.lossCoefficient(), inside);
  }

  @Override
  public Valve narrowed(double factor) {
    return new Valve(label, loss, inside.times(factor), adjustable);
  }
}
