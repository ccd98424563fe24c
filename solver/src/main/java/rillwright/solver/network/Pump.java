package rillwright.solver.network;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpSet;

/**
 * A pump, or several alike.
 *
 * @param model name of its data sheet
 * @param set curve, speed, count and arrangement
 * @param inlet where it takes its water in
 */
public record Pump(String model, PumpSet set, PumpInlet inlet) implements Part {
  public Pump {
    Require.given("model of a pump", model);
    Require.given("set of a pump", set);
    Require.given("inlet of a pump", inlet);
  }

  /** A pump of whose inlet nothing is known. */
  public Pump(String model, PumpSet set) {
    this(model, set, PumpInlet.UNKNOWN);
  }

  /** The same pump at another speed, a share of full speed, 0 or more. */
  public Pump atSpeed(double speed) {
    return new Pump(
        model,
        new PumpSet(set.curve(), speed, set.count(), set.arrangement(), set.runsBack()),
        inlet);
  }

  /** The same pump with another curve. */
  public Pump withCurve(PumpCurve curve) {
    return new Pump(
        model,
        new PumpSet(curve, set.speed(), set.count(), set.arrangement(), set.runsBack()),
        inlet);
  }

  /** The same pump, letting water back with a loss. */
  public Pump runningBack(VelocityHeadLoss loss) {
    return new Pump(
        model,
        new PumpSet(set.curve(), set.speed(), set.count(), set.arrangement(), Optional.of(loss)),
        inlet);
  }

  @Override
  public String kind() {
    return "pump";
  }

  @Override
  public String label() {
    return "pump " + model;
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
    return set;
  }

  /** A running pump gives its shut-off head to what stands downstream of it. */
  @Override
  public OptionalDouble headLossAtRest(Setting setting) {
    boolean passes = set.greatestFlow() > 0;
    return passes ? OptionalDouble.of(set.headLossAt(0)) : OptionalDouble.empty();
  }
}
