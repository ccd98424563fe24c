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
 */
public record SetValve(
    ValvePlace place, Valve valve, Role role, OptionalDouble sensitivityM3PerSPerDegree) {

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
