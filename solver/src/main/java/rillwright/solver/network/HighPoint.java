package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;

/**
 * Where the pipe climbs highest; taken as full, so it costs nothing.
 *
 * @param elevationM m
 * @param bore of the pipe there, where known
 */
public record HighPoint(double elevationM, Optional<Bore> bore) implements Part {

  @Override
  public String kind() {
    return "high point";
  }

  @Override
  public HeadLaw law(Setting setting) {
    return NoLoss.bothWays();
  }
}
