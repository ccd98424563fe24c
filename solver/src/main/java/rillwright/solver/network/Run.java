package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.friction.PipeFriction;
import rillwright.solver.water.Water;

/**
 * A length of pipe.
 *
 * @param lengthM m, greater than 0
 * @param inside its bore
 * @param friction its wall
 * @param label what pipe it is, for a person: "2 in flexible PVC"
 * @param wall its wall, of pressure pipe where it is known
 */
public record Run(
    double lengthM, Bore inside, Friction friction, String label, Optional<PipeWall> wall)
    implements Part {
  public Run {
    Require.positive("length of a run", lengthM, "m");
    Require.given("bore of a run", inside);
    Require.given("friction of a run", friction);
    Require.given("label of a run", label);
    Require.given("wall of a run", wall);
  }

  /** A length of pipe of whose wall nothing is known but its friction. */
  public Run(double lengthM, Bore inside, Friction friction, String label) {
    this(lengthM, inside, friction, label, Optional.empty());
  }

  @Override
  public String kind() {
    return "run";
  }

  @Override
  public Optional<Bore> bore() {
    return Optional.of(inside);
  }

  @Override
  public PipeFriction law(Setting setting) {
    return friction.law(lengthM, inside, setting.water());
  }

  /** Water in it when full, m³. */
  public double volumeM3() {
    return inside.areaM2() * lengthM;
  }

  /** Reynolds number VD/ν at a flow, dimensionless. */
  public double reynoldsAt(double flowM3PerS, Water water) {
    return Math.abs(inside.velocityAt(flowM3PerS))
        * inside.diameterM()
        / water.kinematicViscosityM2PerS();
  }

  @Override
  public Run narrowed(double factor) {
    return new Run(lengthM, inside.times(factor), friction, label, wall);
  }
}
