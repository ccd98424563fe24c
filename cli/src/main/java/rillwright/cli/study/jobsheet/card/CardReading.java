package rillwright.cli.study.jobsheet.card;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;

/**
 * One thing to read.
 *
 * @param at the point, the gauge, or the line of the pump
 * @param what is read there
 * @param expected what it should be, SI; empty of a gauge that is cut off
 * @param low the least that is within the error of the instrument, SI
 * @param high the most, SI
 */
public record CardReading(String at, What what, OptionalDouble expected, double low, double high) {

  /** What is read, in the unit that it says. */
  public sealed interface What {}

  /** What catches a flow. */
  public enum Vessel {
    BUCKET,
    BARREL
  }

  /** When a gauge is read. */
  public enum When {
    RUNNING,
    VALVE_SHUT,
    PUMP_OFF
  }

  /** The time, s, in which a flow fills a vessel. */
  public record Fill(Vessel vessel, double volumeM3) implements What {}

  /** The time, s, in which a flow fills up a pool that was bailed down. */
  public record Refill(double areaM2, double depthM) implements What {}

  /** The depth of the water over a crest, m, so far upstream of it, m. */
  public record CrestHead(double upstreamM) implements What {}

  /** The thickness of the sheet where it leaves the crest, m. */
  public record Brink() implements What {}

  /** The pressure on a gauge, Pa; with the last valves of some lines shut, or none. */
  public record Pressure(When when, List<LineName> shut) implements What {
    public Pressure {
      shut = List.copyOf(shut);
    }
  }

  /** The power that a pump draws from the wire, W. */
  public record Power(String pump) implements What {}

  /** How far a chamber's water stands below the basin that feeds it, or above, m. */
  public record Level(PointName basin, boolean above) implements What {}
}
