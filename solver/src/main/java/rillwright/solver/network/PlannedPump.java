package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;

/**
 * Where a pump will stand that is not chosen yet. It gives no head; a network with one has no
 * balance, only a duty.
 */
public record PlannedPump() implements Part {

  @Override
  public String kind() {
    return "pump";
  }

  @Override
  public String label() {
    return "pump to be chosen";
  }

  @Override
  public Optional<Bore> bore() {
    return Optional.empty();
  }

  @Override
  public HeadLaw law(Setting setting) {
    return NoLoss.bothWays();
  }
}
