package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;

/**
 * Where the pipe climbs highest; taken as full, so it costs nothing.
 *
 * @param elevationM m
 * @param pipeBore of the pipe there, where known
 */
public record HighPoint(double elevationM, Optional<Bore> pipeBore) implements Part {
  public HighPoint {
    Require.finite("elevation of a high point", elevationM, "m");
    Require.given("bore at a high point", pipeBore);
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
}
