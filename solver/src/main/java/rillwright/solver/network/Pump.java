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
 */
public record Pump(String model, PumpSet set) implements Part {
  public Pump {
    Require.given("model of a pump", model);
    Require.given("set of a pump", set);
  }

  /** The same pump at another speed, a share of full speed, 0 or more. */
  public Pump atSpeed(double speed) {
    return new Pump(
        model, new PumpSet(set.curve(), speed, set.count(), set.arrangement(), set.runsBack()));
  }

  /** The same pump with another curve. */
  public Pump withCurve(PumpCurve curve) {
    return new Pump(
        model, new PumpSet(curve, set.speed(), set.count(), set.arrangement(), set.runsBack()));
  }

  /** The same pump, letting water back with a loss. */
  public Pump runningBack(VelocityHeadLoss loss) {
    return new Pump(
        model,
        new PumpSet(set.curve(), set.speed(), set.count(), set.arrangement(), Optional.of(loss)));
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
  public Optional<Bore> bore() {
    return Optional.empty();
  }

  @Override
  public HeadLaw law(Setting setting) {
    return set;
  }

  /** A running pump gives its shut-off head to what stands behind it. */
  @Override
  public OptionalDouble headLossAtRest(Setting setting) {
    boolean passes = set.greatestFlow() > 0;
    return passes ? OptionalDouble.of(set.headLossAt(0)) : OptionalDouble.empty();
  }
}
