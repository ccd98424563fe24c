package rillwright.solver.study.valvesetting;

import java.util.OptionalDouble;
import rillwright.solver.network.Valve;

/**
 * A valve as it is to be set.
 *
 * @param place where it stands
 * @param valve so set
 * @param role what it is there for
 * @param sensitivityM3PerSPerDegree by how much less runs through it for a degree further shut,
 *     m³/s; empty where no handle is known to turn
 * @param sensitivityM3PerSPerPercent the same for a hundredth of its travel; empty where only its
 *     loss is known
 */
public record SetValve(
    ValvePlace place,
    Valve valve,
    Role role,
    OptionalDouble sensitivityM3PerSPerDegree,
    OptionalDouble sensitivityM3PerSPerPercent) {
  private static final double DEGREES = 90;
  private static final double PERCENT = 100;

  /**
   * A valve as it is to be set.
   *
   * @param perTravel by how much less runs through it for all of its travel, as it begins to, m³/s
   */
  static SetValve of(ValvePlace place, Valve valve, Role role, OptionalDouble perTravel) {
    boolean turns = valve.loss().degreesFromOpen().isPresent();
    return new SetValve(
        place,
        valve,
        role,
        turns ? divided(perTravel, DEGREES) : OptionalDouble.empty(),
        divided(perTravel, PERCENT));
  }

  private static OptionalDouble divided(OptionalDouble number, double by) {
    return number.isPresent() ? OptionalDouble.of(number.getAsDouble() / by) : number;
  }

  /** What a valve is there for. */
  public enum Role {
    /** It is closed so far that its falls get no more than their share. */
    THROTTLED,
    /** It is wide open: it lies on the way to the governing fall, or nearer valves do the work. */
    WIDE_OPEN,
    /** It is closed as far as it goes short of shut, and its falls still get more. */
    TOO_COARSE,
    /** No water runs through it to a fall with a wish; it stays as it is. */
    LEFT_ALONE
  }

  /** Its loss coefficient K, dimensionless. */
  public double lossCoefficient() {
    return valve.loss().lossCoefficient();
  }
}
