package rillwright.solver.stream.time;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.StepNormalizer;
import rillwright.solver.network.PointName;
import rillwright.solver.progress.Progress;
import rillwright.solver.progress.Steps;
import rillwright.solver.stream.RunningWater;
import rillwright.solver.stream.time.TimeCourse.GivenUp;
import rillwright.solver.stream.time.TimeCourse.Moment;
import rillwright.solver.stream.time.WaterCircuit.Phase;

/**
 * Follows the levels of a plan from switch-on until steady, and on after switch-off until it rests.
 *
 * <p>Every store's level is integrated from its own flows; how much water there is follows from the
 * levels by geometry, and that it stays the same is the check.
 *
 * <p>Source of the method: Dormand, J. R. and Prince, P. J., order 8 with error control of orders 5
 * and 3, as in Hairer, Nørsett and Wanner (1993), Solving Ordinary Differential Equations I (from
 * memory), by the library that this uses.
 */
public final class StartAndStop {
  private static final double LEVEL_TOLERANCE_M = 1e-11;
  private static final double RELATIVE_TOLERANCE = 1e-10;
  private static final double LEAST_STEP_S = 1e-12;
  private static final double GREATEST_STEP_S = 30;
  private static final double SEGMENT_S = 120;
  private static final double SAMPLE_S = 10;
  private static final double LONGEST_S = 6 * 3600;

  /** How far it has come is reported against so many steps; gardens take some thousand. */
  private static final int MANY_STEPS = 20_000;

  /** A level that moves slower than this has come to rest, m/s: a millimetre in an hour. */
  private static final double AT_REST_M_PER_S = 2.8e-7;

  private static final double FIRST_WATER = 0.1;

  private final WaterCircuit circuit;
  private final Steps watched;
  private final List<Moment> moments = new ArrayList<>();
  private final double volumeAtRest;
  private double worstVolumeError;
  private double time;
  private double[] levels;

  private StartAndStop(RunningWater steady, Progress progress) {
    this.watched = new Steps(progress, MANY_STEPS);
    this.circuit = new WaterCircuit(steady);
    this.levels = circuit.levelsAtRest();
    this.volumeAtRest = circuit.volumeM3(levels);
  }

  /**
   * The course of a plan.
   *
   * @param steady the plan running, nothing topped up; every basin of it has a shape
   */
  public static TimeCourse of(RunningWater steady) {
    return of(steady, Progress.UNSEEN);
  }

  /**
   * The same, watched.
   *
   * @param progress receives how many steps in time are made; most courses need far less than all
   */
  public static TimeCourse of(RunningWater steady, Progress progress) {
    return new StartAndStop(steady, progress).run();
  }

  private TimeCourse run() {
    sample(time, levels, Phase.RUNNING);
    Optional<GivenUp> givenUp = followed(Phase.RUNNING);
    final double stops = time;
    if (givenUp.isEmpty()) {
      sample(time, levels, Phase.STOPPED);
      givenUp = followed(Phase.STOPPED);
    }
    return new TimeCourse(
        moments,
        givenUp,
        stops,
        firstWater(givenUp),
        circuit.ranOverM3(levels),
        volumeAtRest,
        worstVolumeError);
  }

  /** Integrates until all levels are at rest, or as far as they can be followed. */
  private Optional<GivenUp> followed(Phase phase) {
    try {
      follow(phase);
      return Optional.empty();
    } catch (TooFastToFollow tooFast) {
      if (time > moments.get(moments.size() - 1).timeS()) {
        sample(time, levels, phase);
      }
      return Optional.of(new GivenUp(time, tooFast.water()));
    }
  }

  private void follow(Phase phase) {
    double end = time + LONGEST_S;
    double[] rates = new double[levels.length];
    boolean moves = true;
    while (moves && time < end) {
      Set<Integer> filling = circuit.filling(levels, phase);
      segment(phase, filling);
      circuit.rates(levels, rates, phase, circuit.filling(levels, phase));
      moves = !circuit.filling(levels, phase).isEmpty();
      for (int index : circuit.waterLevels()) {
        moves |= Math.abs(rates[index]) > AT_REST_M_PER_S;
      }
      moves |= phase == Phase.RUNNING && circuit.isFillingStreams(levels);
    }
  }

  private void segment(Phase phase, Set<Integer> filling) {
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(
            LEAST_STEP_S, GREATEST_STEP_S, LEVEL_TOLERANCE_M, RELATIVE_TOLERANCE);
    integrator.addStepHandler(
        step -> {
          time = step.getCurrentState().getTime();
          levels = step.getCurrentState().getPrimaryState();
          watched.done(1);
        });
    double from = time;
    integrator.addStepHandler(
        new StepNormalizer(
            SAMPLE_S,
            (state, last) -> {
              if (state.getTime() > from) {
                sample(state.getTime(), state.getPrimaryState(), phase);
              }
            }));
    if (!filling.isEmpty()) {
      integrator.addEventDetector(new PipesFull(circuit, filling));
    }
    ODEStateAndDerivative after =
        integrator.integrate(
            new CircuitRates(circuit, phase, filling),
            new ODEState(from, levels),
            from + SEGMENT_S);
    time = after.getTime();
    levels = after.getPrimaryState();
  }

  private void sample(double at, double[] levelsThen, Phase phase) {
    Set<Integer> filling = circuit.filling(levelsThen, phase);
    Map<PointName, Double> over =
        circuit.rates(levelsThen, new double[levelsThen.length], phase, filling);
    worstVolumeError =
        Math.max(worstVolumeError, Math.abs(circuit.volumeM3(levelsThen) - volumeAtRest));
    moments.add(
        new Moment(
            at,
            phase == Phase.RUNNING,
            circuit.levelsM(levelsThen),
            new LinkedHashMap<>(over),
            circuit.returnFlowM3PerS(levelsThen),
            circuit.poolHeadsM(levelsThen)));
  }

  private OptionalDouble firstWater(Optional<GivenUp> givenUp) {
    if (givenUp.isPresent() && moments.stream().allMatch(Moment::pumping)) {
      return OptionalDouble.empty(); // nobody knows what it would bring home
    }
    Map<String, Double> steady =
        moments.stream()
            .filter(Moment::pumping)
            .reduce((one, later) -> later)
            .orElseThrow()
            .returnFlowM3PerS();
    for (Moment moment : moments) {
      for (Map.Entry<String, Double> stream : steady.entrySet()) {
        double home = moment.returnFlowM3PerS().get(stream.getKey());
        if (stream.getValue() > 0 && home >= FIRST_WATER * stream.getValue()) {
          return OptionalDouble.of(moment.timeS());
        }
      }
    }
    return OptionalDouble.empty();
  }
}
