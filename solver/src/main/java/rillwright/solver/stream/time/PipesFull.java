package rillwright.solver.stream.time;

import java.util.Set;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** The moment at which the first of some filling pipes is full; the integration stops there. */
final class PipesFull implements ODEEventDetector {
  private static final double LOOK_EVERY_S = 2;
  private static final int MOST_LOOKS = 200;
  private static final int ORDER = 5;
  private static final double TIME_TOLERANCE_S = 1e-9;

  private final WaterCircuit circuit;
  private final Set<Integer> filling;

  PipesFull(WaterCircuit circuit, Set<Integer> filling) {
    this.circuit = circuit;
    this.filling = filling;
  }

  @Override
  public AdaptableInterval getMaxCheckInterval() {
    return AdaptableInterval.of(LOOK_EVERY_S);
  }

  @Override
  public int getMaxIterationCount() {
    return MOST_LOOKS;
  }

  @Override
  public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
    return new BracketingNthOrderBrentSolver(0, TIME_TOLERANCE_S, 0, ORDER);
  }

  @Override
  public ODEEventHandler getHandler() {
    return (state, detector, increasing) -> Action.STOP;
  }

  @Override
  public double g(ODEStateAndDerivative state) {
    return circuit.room(state.getPrimaryState(), filling);
  }
}
