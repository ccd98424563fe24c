package rillwright.cli.study.compare;

import java.util.OptionalDouble;

/**
 * One figure of two solved projects.
 *
 * @param at name of the point, line or gauge; "" for the whole job
 * @param figure what it is
 * @param a in the first project, SI; empty if it has none
 * @param b in the second project, SI; empty if it has none
 */
public record Measured(String at, Kind figure, OptionalDouble a, OptionalDouble b) {
  /** Shares of a figure that the iteration leaves open. */
  private static final double SAME = 1e-7;

  /** What is compared. */
  public enum Kind {
    /** Flow out of the network at a fall or outlet, m³/s. */
    FLOW_OUT,
    /** Head upstream of a fall's crest, m. */
    CREST_HEAD,
    /** Flow of a pump, m³/s. */
    PUMP_FLOW,
    /** Head of a pump, m. */
    PUMP_HEAD,
    /** Electrical power of a pump, W. */
    PUMP_POWER,
    /** Water level of a basin or chamber, m in the file's datum. */
    LEVEL,
    /** Flow of a line, m³/s. */
    LINE_FLOW,
    /** Speed in a line's pipe, m/s. */
    LINE_SPEED,
    /** What a gauge reads while the pumps run, Pa. */
    GAUGE_PRESSURE,
    /** Electrical power of all pumps, W. */
    POWER,
    /** Energy of a year, kWh. */
    ENERGY,
    /** Electricity of a year, in the currency of the price. */
    COST
  }

  /** Whether it differs by more than rounding; one of them has it. */
  public boolean differs() {
    return change().isEmpty()
        || Math.abs(change().getAsDouble())
            > SAME * Math.max(Math.abs(a.getAsDouble()), Math.abs(b.getAsDouble()));
  }

  /** The second less the first, SI; empty if one is missing. */
  public OptionalDouble change() {
    return a.isPresent() && b.isPresent()
        ? OptionalDouble.of(b.getAsDouble() - a.getAsDouble())
        : OptionalDouble.empty();
  }
}
