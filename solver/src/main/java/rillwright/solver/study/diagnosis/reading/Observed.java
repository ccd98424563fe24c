package rillwright.solver.study.diagnosis.reading;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;
import rillwright.solver.network.Valve;
import rillwright.solver.reading.GaugeReading;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.job.Look;
import rillwright.solver.study.diagnosis.job.PartPlace;

/** A job with changes made, in one state, as it is seen by who reads it. */
public final class Observed {
  private final Alteration job;
  private final SteadyState state;
  private final Map<String, OptionalDouble> gauges = new HashMap<>();

  private Observed(Alteration job, SteadyState state, List<GaugeReading> gauges) {
    this.job = job;
    this.state = state;
    gauges.forEach(reading -> this.gauges.put(reading.gauge().name(), reading.pressurePa()));
  }

  /**
   * A job in a state; empty if there is no such state.
   *
   * @param job as altered, the state not yet brought about; it is brought about here
   */
  public static Optional<Observed> of(Alteration job, When when) {
    return of(job, when, SteadyStateFinder::find);
  }

  /**
   * The same of a job that was little altered: found from how it was observed before.
   *
   * @param like the same job, altered otherwise or not at all, in the same state
   */
  public static Optional<Observed> of(Alteration job, When when, Observed like) {
    return of(job, when, network -> SteadyStateFinder.find(network, like.state));
  }

  /** What it took to balance it: Newton steps times lines. */
  public long linesSolved() {
    return (long) state.iterations() * state.network().lines().size();
  }

  /** This job, as built here, with an alteration that leaves its network as it is. */
  public Observed with(Alteration job, When when) {
    return new Observed(job, state, when.gauges(state));
  }

  private static Optional<Observed> of(
      Alteration job, When when, Function<Network, SteadyState> finder) {
    when.apply(job);
    try {
      return Optional.of(observe(job, when, finder));
    } catch (NoBalance | SearchFailed none) {
      return Optional.empty();
    }
  }

  private static Observed observe(
      Alteration job, When when, Function<Network, SteadyState> finder) {
    SteadyState state = finder.apply(job.network());
    return new Observed(job, state, when.gauges(state));
  }

  /** What flows over a fall or out of an outlet, m³/s, as far as it is seen. */
  public double flowM3PerS(PointName point) {
    return state.point(point).outflowM3PerS() * job.shareSeen(point);
  }

  /** What flows in a line, m³/s; where it is in pieces, in the first. */
  public double lineFlowM3PerS(LineName line) {
    return state.line(line).flowM3PerS();
  }

  /** What arrives at the end of a line, m³/s; where it is in pieces, of the last. */
  public double lineEndFlowM3PerS(LineName line) {
    List<LineName> pieces = job.piecesOf(line);
    return state.line(pieces.get(pieces.size() - 1)).flowM3PerS();
  }

  /** What flows out of a point in all lines that take from it, m³/s. */
  public double flowOutOfM3PerS(PointName point) {
    double sum = 0;
    for (Line line : state.network().lines()) {
      double flow = state.line(line.name()).flowM3PerS();
      sum += line.from().equals(point) ? Math.max(0, flow) : 0;
      sum += line.to().equals(point) ? Math.max(0, -flow) : 0;
    }
    return sum;
  }

  /** Head over a fall's crest by the ruler, m. */
  public double crestHeadM(PointName fall) {
    return fall(fall).weir().rulerHeadAt(flowM3PerS(fall));
  }

  /** Depth at a fall's brink, m; empty where no rule tells it. */
  public OptionalDouble brinkDepthM(PointName fall) {
    return fall(fall).weir().brinkDepthAt(flowM3PerS(fall));
  }

  private Fall fall(PointName name) {
    return job.fall(name);
  }

  /** Pressure in a tee, Pa; empty where nothing determines it. */
  public OptionalDouble pressurePa(PointName tee) {
    Tee point = (Tee) state.point(tee).point();
    return point.pressurePa(state.point(tee).headM(), state.network().water());
  }

  /** What a gauge shows, Pa; empty where it is cut off. */
  public OptionalDouble gaugePa(String gauge) {
    return gauges.getOrDefault(gauge, OptionalDouble.empty());
  }

  /** Level of open water, m; empty where nothing determines it. */
  public OptionalDouble levelM(PointName point) {
    return state.point(point).headM();
  }

  /** How much there is to be seen, as a share of what is lost there; 0 if nothing. */
  double shown(Look look, String at) {
    return job.shown(look, at);
  }

  /** How far the handle of a line's last valve stands from open, degrees; empty if none turns. */
  OptionalDouble handleDegrees(String line) {
    LineName name = new LineName(line);
    int valve = When.ValveShut.lastValve(job.asBuilt().line(name));
    return valve >= 0 && job.part(new PartPlace(name, valve)) instanceof Valve last
        ? last.loss().degreesFromOpen()
        : OptionalDouble.empty();
  }

  /**
   * How far the water behind a line's skimmer is below the pond, m; empty where it is not known.
   */
  OptionalDouble behindMouthM(String line) {
    LineState intake = state.line(new LineName(line));
    OptionalDouble chamber = state.point(intake.line().to()).headM();
    OptionalDouble pond = state.point(intake.line().from()).headM();
    if (chamber.isEmpty() || pond.isEmpty()) {
      return OptionalDouble.empty();
    }
    double behind = chamber.getAsDouble() + intake.exitLossM();
    for (int i = intake.parts().size() - 1; i >= 0; i--) {
      if (intake.parts().get(i).part() instanceof Skimmer) {
        return OptionalDouble.of(Math.max(0, pond.getAsDouble() - behind));
      }
      behind += intake.parts().get(i).headLossM().orElse(0);
    }
    return OptionalDouble.empty();
  }

  /** Voltage at a line's pump, V; empty where no sheet says what it is rated for. */
  OptionalDouble volts(String line) {
    LineName name = new LineName(line);
    for (Placed<Pump> pump : job.asBuilt().line(name).placed(Pump.class)) {
      OptionalDouble rated = job.facts().ratedV(pump.part());
      if (rated.isPresent()) {
        return OptionalDouble.of(rated.getAsDouble() * job.voltageShare(name));
      }
    }
    return OptionalDouble.empty();
  }

  /** What flows over a fall's crest, m³/s, lost on the way or not. */
  OptionalDouble boxM3PerS(String fall) {
    return OptionalDouble.of(state.point(new PointName(fall)).outflowM3PerS());
  }

  /**
   * By how much a pond falls, m/s; empty unless it is the only one, its area and what evaporates
   * known.
   */
  OptionalDouble fallsMPerS(String pond) {
    List<Basin> basins = job.asBuilt().points(Basin.class);
    Basin basin = basins.isEmpty() ? null : basins.get(0);
    if (basins.size() != 1 || basin.shape().isEmpty()) {
      return OptionalDouble.empty();
    }
    double area = basin.shape().get().areaM2(basin.levelM());
    OptionalDouble evaporates = job.facts().evaporationMPerS();
    return evaporates.isPresent() && area > 0 && basin.name().value().equals(pond)
        ? OptionalDouble.of(evaporates.getAsDouble() + lostM3PerS() / area)
        : OptionalDouble.empty();
  }

  /** What is lost to the ponds, m³/s: through holes, and on the way down from falls. */
  private double lostM3PerS() {
    double lost = job.lossWays().stream().mapToDouble(way -> state.line(way).flowM3PerS()).sum();
    for (Fall fall : state.network().points(Fall.class)) {
      lost += state.point(fall.name()).outflowM3PerS() * job.shareLost(fall.name());
    }
    return lost;
  }

  /** Power that the pumps of a line draw, W; empty if no sheet tells it. */
  public OptionalDouble powerW(LineName line) {
    List<LineName> pieces = job.piecesOf(line);
    double sum = 0;
    boolean known = false;
    for (Placed<Pump> pump : state.network().placed(Pump.class)) {
      if (pieces.contains(pump.line().name())) {
        OptionalDouble power = pump.part().set().powerAt(state.part(pump).flowM3PerS());
        known |= power.isPresent();
        sum += power.orElse(0);
      }
    }
    return known ? OptionalDouble.of(sum) : OptionalDouble.empty();
  }
}
