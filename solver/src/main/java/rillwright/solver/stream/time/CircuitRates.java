package rillwright.solver.stream.time;

import java.util.Set;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import rillwright.solver.stream.time.WaterCircuit.Phase;

/** A circuit as the integrator's library wants it: rates of levels by levels. */
final class CircuitRates implements OrdinaryDifferentialEquation {
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
    circuit.rates(levels, rates, phase, filling);
    return rates;
  }
}
