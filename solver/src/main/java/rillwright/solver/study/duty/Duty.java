package rillwright.solver.study.duty;

import java.util.Map;
import java.util.Optional;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.LeastShutOff;

/**
 * The flow and head that a pump must make.
 *
 * @param asTheyStand with the valves as they stand: the least flow at which every fall gets at
 *     least its target; empty if no flow that can be drawn is enough
 * @param throttled with the falls that get too much throttled: each gets its target, at the head of
 *     the governing one; empty likewise
 * @param governing the fall that decides the head
 * @param greatestFlowM3PerS the greatest flow that the pump could draw, m³/s, where that is less
 *     than the falls need
 * @param leastShutOff the head at no flow without which its water does not come over a high point;
 *     empty without one on its way
 */
public record Duty(
    Optional<AsTheyStand> asTheyStand,
    Optional<Throttled> throttled,
    Optional<PointName> governing,
    Optional<Double> greatestFlowM3PerS,
    Optional<LeastShutOff> leastShutOff) {

  /**
   * With the valves as they stand.
   *
   * @param flowM3PerS the pump's flow, m³/s
   * @param headM the pump's head, m
   * @param fallsM3PerS what every fall and outlet with a target gets, m³/s, in the order of the
   *     network
   */
  public record AsTheyStand(double flowM3PerS, double headM, Map<PointName, Double> fallsM3PerS) {}

  /**
   * With the others throttled.
   *
   * @param flowM3PerS the pump's flow, m³/s
   * @param headM the pump's head, m
   */
  public record Throttled(double flowM3PerS, double headM) {}
}
