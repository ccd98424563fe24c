package rillwright.solver.finding;

/**
 * A number that a finding shows.
 *
 * @param name what it is, for programs: "flow"
 * @param value in the unit
 * @param unit of the value
 */
public record Figure(String name, double value, Unit unit) {
  public Figure {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + "; it must be finite");
    }
  }

  /** What a figure is measured in. */
  public enum Unit {
    /** Of flows. */
    CUBIC_METRE_PER_SECOND("m3/s"),

    /** Of levels, depths, lengths and heads. */
    METRE("m"),

    /** Of the speed of water. */
    METRE_PER_SECOND("m/s"),

    /** Of pressures above the air's. */
    PASCAL("Pa"),

    /** Of powers. */
    WATT("W"),

    /** Of volumes of water. */
    CUBIC_METRE("m3"),

    /** Of short times. */
    SECOND("s"),

    /** Of times that are counted in days. */
    DAY("d"),

    /** Of shares and plain numbers. */
    ONE("1");

    private final String symbol;

    Unit(String symbol) {
      this.symbol = symbol;
    }

    /** As it is written: "m3/s". */
    public String symbol() {
      return symbol;
    }
  }
}
