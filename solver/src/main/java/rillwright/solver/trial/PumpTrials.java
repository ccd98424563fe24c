package rillwright.solver.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Findings;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Pump;
import rillwright.solver.network.PumpInlet;
import rillwright.solver.pumping.HeadNeeded;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.pumping.TargetHead.Governed;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * Tries pumps in place of the pump of a network. Each is put in and the whole network balanced, so
 * that a trial says what the balance says.
 */
public final class PumpTrials {
  private final Network network;
  private final PumpPlace place;
  private final Demand demand;
  private final Judge judge;

  /**
   * Trials at a place of a network whose other pumps are chosen.
   *
   * @throws IllegalArgumentException if there is no target
   */
  public PumpTrials(Network network, PumpPlace place) {
    this.network = network;
    this.place = place;
    this.demand = Demand.at(network, place);
    this.judge = new Judge(demand, network.water().densityKgPerM3());
  }

  /** What the targets ask of the pump. */
  public Demand demand() {
    return demand;
  }

  /**
   * One trial.
   *
   * @throws rillwright.solver.steady.NoBalance if there is no balanced state with this pump
   */
  public PumpTrial run(PumpSetup setup) {
    PumpSet set = setup.set(runsBack());
    Pump pump = new Pump(setup.offer().model(), set, inlet().withNeeds(setup.offer().needs()));
    Network tried = network.withPart(place.line(), place.partIndex(), pump);
    SteadyState state =
        demand
            .asTheyStand()
            .map(enough -> SteadyStateFinder.find(tried, enough.state()))
            .orElseGet(() -> SteadyStateFinder.find(tried));
    double flow = state.line(place.line()).flowM3PerS();
    RunningPoint operating = RunningPoint.of(set, flow, network.water().densityKgPerM3());
    Verdict verdict = judge.judge(set, flow, state);
    SteadyState throttledOrNot =
        verdict
            .throttledState()
            .map(it -> it.withPart(place.line(), place.partIndex(), pump))
            .orElse(state);
    List<Finding> findings = new ArrayList<>(Findings.of(throttledOrNot));
    double inUse = verdict.throttled().orElse(operating).flowM3PerS();
    FarFromBest.find(place.line().value(), set, inUse).ifPresent(findings::add);
    return new PumpTrial(setup, set, state, operating, verdict, findings);
  }

  /** Where the place takes water in stays as it is. */
  private PumpInlet inlet() {
    Part part = network.line(place.line()).parts().get(place.partIndex());
    return part instanceof Pump pump
        ? pump.inlet()
        : part instanceof PlannedPump planned ? planned.inlet() : PumpInlet.UNKNOWN;
  }

  /** What the place says about water that runs back stays there. */
  private Optional<VelocityHeadLoss> runsBack() {
    Part part = network.line(place.line()).parts().get(place.partIndex());
    return part instanceof Pump pump ? pump.set().runsBack() : Optional.empty();
  }

  /**
   * A pump as it is, and if its speed can be set also at the least speed that gives every fall its
   * target: with the valves as they stand or, where that gives some fall far too much, throttled.
   */
  public List<PumpTrial> runAtUsefulSpeeds(PumpSetup setup) {
    List<PumpTrial> trials = new ArrayList<>();
    trials.add(run(setup));
    Optional<PumpTrial> slower = slowest(setup);
    slower.filter(trial -> trial.setup().speed() != setup.speed()).ifPresent(trials::add);
    return trials;
  }

  private Optional<PumpTrial> slowest(PumpSetup setup) {
    Optional<PumpTrial> asTheyStand = slowestFor(demand.asTheyStand(), setup);
    boolean doesAsItIs =
        asTheyStand.isPresent() && asTheyStand.get().verdict().throttled().isEmpty();
    return doesAsItIs
        ? asTheyStand
        : slowestFor(demand.throttled().map(Governed::needed), setup).or(() -> asTheyStand);
  }

  /** At the least speed for what is needed; empty where next to nothing is. */
  private Optional<PumpTrial> slowestFor(Optional<HeadNeeded> needed, PumpSetup setup) {
    return needed
        .filter(point -> !demand.targets().isNextToNothing(point.flowM3PerS()))
        .flatMap(point -> setup.slowestFor(point, demand))
        .map(this::run);
  }
}
