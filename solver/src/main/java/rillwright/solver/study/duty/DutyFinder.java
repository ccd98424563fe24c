package rillwright.solver.study.duty;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.HeadNeeded;
import rillwright.solver.pumping.LeastShutOff;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.pumping.TargetHead;
import rillwright.solver.pumping.TargetHead.Governed;
import rillwright.solver.pumping.Targets;
import rillwright.solver.study.duty.Duty.AsTheyStand;
import rillwright.solver.study.duty.Duty.Throttled;

/**
 * Finds the {@link Duty} of the pump at a place. The governing fall is the one that asks for the
 * most head when all get exactly their targets.
 */
public final class DutyFinder {
  private DutyFinder() {}

  /**
   * The duty of the pump at a place.
   *
   * @throws IllegalArgumentException if no fall or outlet has a target
   * @throws rillwright.solver.steady.NoBalance if draws cannot be met whatever pump stands there
   */
  public static Duty find(Network network, PumpPlace place) {
    place.requireDrawsMet(network);
    Targets targets = Targets.of(network);
    TargetHead head = new TargetHead(network, place, targets);
    Optional<HeadNeeded> asTheyStand = head.asTheyStand();
    Optional<Governed> throttled = head.throttled();
    Optional<Double> greatest = Optional.empty();
    if (asTheyStand.isEmpty() || throttled.isEmpty()) {
      double more = 2 * targets.sumM3PerS();
      double found = HeadNeeded.greatestFlowM3PerS(network, place, more);
      greatest = found < more ? Optional.of(found) : Optional.empty();
    }
    return new Duty(
        asTheyStand.map(needed -> describe(needed, targets)),
        throttled
            .map(Governed::needed)
            .map(needed -> new Throttled(needed.flowM3PerS(), needed.headM())),
        throttled.map(Governed::governing),
        greatest,
        LeastShutOff.at(network, place));
  }

  private static AsTheyStand describe(HeadNeeded needed, Targets targets) {
    Map<PointName, Double> falls = new LinkedHashMap<>();
    for (PointName fall : targets.falls()) {
      falls.put(fall, needed.state().point(fall).outflowM3PerS());
    }
    return new AsTheyStand(needed.flowM3PerS(), needed.headM(), falls);
  }
}
