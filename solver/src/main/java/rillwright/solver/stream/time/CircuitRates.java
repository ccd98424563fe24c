package rillwright.solver.stream.time;

import java.util.Set;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import rillwright.solver.stream.time.WaterCircuit.Phase;

/** A circuit as the integrator's library wants it: rates of levels by levels. */
final class CircuitRates implements OrdinaryDifferentialEquation {
  /** Some seconds of a usual machine; most gardens take a tenth of it. */
  private static final double MOST_WORK = 4.8e6;

  private final WaterCircuit circuit;
  private final Phase phase;
  private final Set<Integer> filling;

  CircuitRates(WaterCircuit circuit, Phase phase, Set<Integer> filling) {
    this.circuit = circuit;
    this.phase = phase;
    this.filling = filling;
  }

  @Override
  public int getDimension() {
    return circuit.levelsAtRest().length;
  }

  @Override
  public double[] computeDerivatives(double time, double[] levels) {
    double[] rates = new double[levels.length];
    if (circuit.work() > MOST_WORK) {
      throw new TooFastToFollow(time, circuit.smallestWater(levels));
    }
    circuit.rates(levels, rates, phase, filling);
    return rates;
  }
}
