package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;

/**
 * A named tap for a pressure gauge; costs nothing, reads static pressure.
 *
 * @param name unique in the file
 * @param elevationM where it sits, m
 * @param bore of the pipe it sits in, where known: its velocity head is taken off
 */
public record Gauge(String name, double elevationM, Optional<Bore> bore) implements Part {

  @Override
  public String kind() {
    return "gauge";
  }

  @Override
  public HeadLaw law(Setting setting) {
    return NoLoss.bothWays();
  }
}
