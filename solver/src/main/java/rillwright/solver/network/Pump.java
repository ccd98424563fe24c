package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.pump.PumpSet;

/**
 * A pump, or several alike.
 *
 * @param model name of its data sheet
 * @param set curve, speed, count and arrangement
 */
public record Pump(String model, PumpSet set) implements Part {

  @Override
  public String kind() {
    return "pump";
  }

  @Override
  public String label() {
    return "pump " + model;
  }

  @Override
  public Optional<Bore> bore() {
    return Optional.empty();
  }

  @Override
  public HeadLaw law(Setting setting) {
    return set;
  }
}
