package rillwright.solver.stream.time;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.stream.DrainingPipes;
import rillwright.solver.stream.time.WaterCircuit.Phase;

/**
 * Pipes downstream of pumps without a check valve: the pump fills them before any fall runs, and
 * when it stops they drain back through it.
 */
final class PipeDrains {
  /** K of water running back through a stopped pump, unless the file says another; a guess. */
  private static final double RUNS_BACK_K = 15;

  /** Share from which pipes count as full: the moment when they are is found only so closely. */
  private static final double NEARLY_FULL = 1 - 1e-9;

  /** Nearly empty pipes give less and less, below this share of full. */
  private static final double RAMP = 1e-3;

  private final List<Drain> drains = new ArrayList<>();

  /** Pipes as one store, its level how full they are, fed and drained by the pump's line. */
  private record Drain(
      Line pumpLine, int source, int store, Front front, HeldLine filling, HeldLine draining) {}

  void add(DrainingPipes pipes, int source, int store, Front front, Network on, Network off) {
    Line line = pipes.pumpLine();
    drains.add(
        new Drain(
            line,
            source,
            store,
            front,
            new HeldLine(on, line, List.of()),
            new HeldLine(off, off.line(line.name()), List.of())));
  }

  /** The network with its pumps stopped: shut, or letting water back for lack of a check valve. */
  static Network off(Network network) {
    Network off = network;
    List<Line> back = DrainingPipes.listIn(network).stream().map(DrainingPipes::pumpLine).toList();
    for (Line line : network.lines()) {
      List<Part> parts =
          line.parts().stream().map(part -> stopped(part, line, back.contains(line))).toList();
      off = off.withLine(line.withParts(parts));
    }
    return off;
  }

  private static Part stopped(Part part, Line line, boolean letsBack) {
    if (!(part instanceof Pump pump)) {
      return part;
    }
    PumpSet set = pump.set();
    Optional<VelocityHeadLoss> back =
        letsBack
            ? set.runsBack()
                .or(() -> line.mainBore().map(bore -> new VelocityHeadLoss(RUNS_BACK_K, bore)))
            : Optional.empty();
    return new Pump(
        pump.model(), new PumpSet(set.curve(), 0, set.count(), set.arrangement(), back));
  }

  /** Those that are still filling at some levels, by their number. */
  Set<Integer> filling(double[] levels, Phase phase) {
    Set<Integer> filling = new LinkedHashSet<>();
    for (int i = 0; i < drains.size(); i++) {
      Drain drain = drains.get(i);
      if (phase == Phase.RUNNING && levels[drain.store()] < NEARLY_FULL) {
        filling.add(i);
      }
    }
    return filling;
  }

  /** How far the nearest of some filling ones is from full, a share; below 0 when full. */
  double room(double[] levels, Set<Integer> filling) {
    double room = Double.POSITIVE_INFINITY;
    for (int i : filling) {
      room = Math.min(room, 1 - levels[drains.get(i).store()]);
    }
    return room;
  }

  /** Whether what runs in some pipes is a matter of filling or draining now. */
  boolean takeOver(PipeFlows flows, Phase phase, Set<Integer> filling) {
    for (int i = 0; i < drains.size(); i++) {
      boolean apart = phase == Phase.STOPPED || filling.contains(i);
      if (apart && flows.contains(drains.get(i).pumpLine())) {
        return true;
      }
    }
    return false;
  }

  /** Adds to what each store gains, m³/s. */
  void move(double[] levels, double[] net, Phase phase, Set<Integer> filling) {
    for (int i = 0; i < drains.size(); i++) {
      if (phase == Phase.STOPPED || filling.contains(i)) {
        Drain drain = drains.get(i);
        double flow = flow(drain, levels, phase);
        net[drain.source()] -= flow;
        net[drain.store()] += flow;
      }
    }
  }

  private static double flow(Drain drain, double[] levels, Phase phase) {
    double full = levels[drain.store()];
    HeldLine line = phase == Phase.RUNNING ? drain.filling() : drain.draining();
    double flow = line.flowM3PerS(levels[drain.source()], drain.front().levelM(full));
    if (flow < 0) {
      return flow * Math.max(0, Math.min(1, full / RAMP));
    }
    return phase == Phase.STOPPED ? 0 : flow;
  }
}
