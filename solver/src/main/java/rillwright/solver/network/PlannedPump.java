package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;

/**
 * Where a pump will stand that is not chosen yet. It gives no head; a network with one has no
 * balance, only a duty.
 *
 * @param inlet where it will take its water in
 */
public record PlannedPump(PumpInlet inlet) implements Part {
  public PlannedPump {
    Require.given("inlet of a pump", inlet);
  }

  /** A pump of whose inlet nothing is known. */
  public PlannedPump() {
    this(PumpInlet.UNKNOWN);
  }

  @Override
  public String kind() {
    return "pump";
  }

  @Override
  public String label() {
    return "pump to be chosen";
  }

  @Override
  public boolean coversChangeOfBore() {
    return true;
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
