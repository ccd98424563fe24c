package rillwright.solver.study.valvesetting;

import java.util.OptionalDouble;
import rillwright.solver.network.Valve;

/**
 * A valve as it is to be set.
 *
 * @param place where it stands
 * @param valve so set
 * @param role what it is there for
 * @param sensitivityM3PerS by how much less would run through it for all of its travel, at the
 *     slope where it stands, m³/s; empty where only its loss is known
 */
public record SetValve(ValvePlace place, Valve valve, Role role, OptionalDouble sensitivityM3PerS) {
  private static final double DEGREES = 90;
  private static final double PERCENT = 100;

  /**
   * By how much less runs through it for a degree further shut, m³/s; empty where no handle is
   * known to turn.
   */
  public OptionalDouble sensitivityM3PerSPerDegree() {
    return valve.loss().degreesFromOpen().isPresent()
        ? divided(sensitivityM3PerS, DEGREES)
        : OptionalDouble.empty();
  }

  /** The same for a hundredth of its travel; empty where only its loss is known. */
  public OptionalDouble sensitivityM3PerSPerPercent() {
    return divided(sensitivityM3PerS, PERCENT);
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
    /** No water runs through it to a fall with a target; it stays as it is. */
    LEFT_ALONE
  }

  /** Its loss coefficient K, dimensionless; empty where it is to be shut. */
  public OptionalDouble lossCoefficient() {
    return valve.isShut()
        ? OptionalDouble.empty()
        : OptionalDouble.of(valve.loss().lossCoefficient());
  }
}
