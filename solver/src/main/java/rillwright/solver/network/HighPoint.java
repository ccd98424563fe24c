package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;

/**
 * Where the pipe climbs highest; where it runs full it costs nothing.
 *
 * @param elevationM m
 * @param pipeBore of the pipe there, where known
 * @param air what becomes of the air there
 * @param fallDegrees fall of the pipe that goes down from it, below the horizontal, 0 to 90
 */
public record HighPoint(double elevationM, Optional<Bore> pipeBore, Air air, double fallDegrees)
    implements Part {
  /** The fall where nobody says it. */
  public static final double UPRIGHT_DEGREES = 90;

  /** What becomes of the air at a high point. */
  public enum Air {
    /** The water sweeps it out, if it is fast enough. */
    SWEPT,
    /** Somebody takes it out by hand before every start. */
    PRIMED,
    /** A vent lets it in. */
    VENTED
  }

  public HighPoint {
    Require.finite("elevation of a high point", elevationM, "m");
    Require.given("bore at a high point", pipeBore);
    Require.given("air at a high point", air);
    Require.between("fall downstream of a high point", fallDegrees, 0, UPRIGHT_DEGREES, "°");
  }

  /** Where nothing is done about the air and the pipe downstream of it falls upright. */
  public HighPoint(double elevationM, Optional<Bore> pipeBore) {
    this(elevationM, pipeBore, Air.SWEPT, UPRIGHT_DEGREES);
  }

  /**
   * Height of the water's pressure above the air's, m: total head less elevation less velocity
   * head; negative under suction.
   *
   * @param headM total head there, m
   * @param flowM3PerS flow over it, m³/s
   */
  public double pressureHeadM(double headM, double flowM3PerS) {
    double velocityHead = pipeBore.map(bore -> bore.velocityHeadAt(flowM3PerS)).orElse(0.0);
    return headM - elevationM - velocityHead;
  }

  @Override
  public String kind() {
    return "high point";
  }

  /** A place has no bore of its own; the end of a line beside it takes that of the nearest part. */
  @Override
  public Optional<Bore> bore() {
    return Optional.empty();
  }

  @Override
  public HeadLaw law(Setting setting) {
    return NoLoss.bothWays();
  }

  @Override
  public HighPoint narrowed(double factor) {
    return new HighPoint(elevationM, pipeBore.map(bore -> bore.times(factor)), air, fallDegrees);
  }
}
