package rillwright.solver.network;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.Shut;
import rillwright.solver.law.minor.ValveLoss;
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
  public Valve {
    Require.given("label of a valve", label);
    Require.given("loss of a valve", loss);
    Require.given("bore of a valve", inside);
  }

  /** How a valve's loss is known. */
  public sealed interface Setpoint {
    /** Loss coefficient K, dimensionless; infinite when shut. */
    double lossCoefficient();

    /** Whether it lets nothing through. */
    default boolean isShut() {
      return Double.isInfinite(lossCoefficient());
    }

    /** As far open as it goes; a given loss is taken for that of the open valve. */
    Setpoint wideOpen();

    /** Closed so far that it takes a loss coefficient K not below that of the open valve. */
    Setpoint closedTo(double newLossCoefficient);

    /** The greatest K that it can be set to short of shutting it. */
    double greatestLossCoefficient();

    /** Share of the handle's travel, 0 (shut) to 1; empty where only the loss is known. */
    OptionalDouble opening();

    /** How far the handle stands from open, degrees; empty where no handle is known to turn. */
    OptionalDouble degreesFromOpen();
  }

  /** A loss coefficient from the file, 0 or more; infinite is shut. */
  public record GivenLoss(double lossCoefficient) implements Setpoint {
    /** Lets nothing through. */
    public static final GivenLoss SHUT = new GivenLoss(Double.POSITIVE_INFINITY);

    public GivenLoss {
      if (lossCoefficient != Double.POSITIVE_INFINITY) {
        Require.atLeast("loss coefficient", lossCoefficient, 0, "");
      }
    }

    @Override
    public Setpoint wideOpen() {
      return this;
    }

    @Override
    public Setpoint closedTo(double newLossCoefficient) {
      return new GivenLoss(newLossCoefficient);
    }

    @Override
    public double greatestLossCoefficient() {
      return Double.POSITIVE_INFINITY;
    }

    @Override
    public OptionalDouble opening() {
      return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble degreesFromOpen() {
      return OptionalDouble.empty();
    }
  }

  /**
   * A loss by opening.
   *
   * @param loss published loss against opening
   * @param open share of the handle's travel, 0 (shut) to 1
   */
  public record Opening(ValveLoss loss, double open) implements Setpoint {
    public Opening {
      Require.given("loss of a valve by opening", loss);
      Require.between("opening of a valve", open, 0, 1, "");
    }

    /** Of a valve whose K when open is as published, whatever its size. */
    public Opening(ValveTravel travel, double open) {
      this(travel.published(), open);
    }

    /** The same valve otherwise open. */
    public Opening at(double otherShare) {
      return new Opening(loss, otherShare);
    }

    /** The kind of valve. */
    public ValveTravel travel() {
      return loss.travel();
    }

    @Override
    public double lossCoefficient() {
      return loss.lossCoefficientAt(open);
    }

    @Override
    public Setpoint wideOpen() {
      return at(1);
    }

    @Override
    public Setpoint closedTo(double newLossCoefficient) {
      return at(loss.openingAt(newLossCoefficient));
    }

    @Override
    public double greatestLossCoefficient() {
      return loss.greatestLossCoefficient();
    }

    @Override
    public OptionalDouble opening() {
      return OptionalDouble.of(open);
    }

    @Override
    public OptionalDouble degreesFromOpen() {
      return travel().turns()
          ? OptionalDouble.of(ValveTravel.degreesFromOpen(open))
          : OptionalDouble.empty();
    }
  }

  /** The same valve, shut. */
  public Valve shut() {
    return withSetpoint(GivenLoss.SHUT);
  }

  /** The same valve, wide open. */
  public Valve wideOpen() {
    return withSetpoint(loss.wideOpen());
  }

  /** The same valve, set otherwise. */
  public Valve withSetpoint(Setpoint other) {
    return new Valve(label, other, inside, adjustable);
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
    return loss.isShut();
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
