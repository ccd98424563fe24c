package rillwright.curves.unit;

import java.util.Arrays;
import java.util.List;

/** What a quantity measures. */
public enum Dimension {
  LENGTH("a length"),
  FLOW("a flow"),
  FLOW_PER_WIDTH("a flow per width"),
  PRESSURE("a pressure"),
  AREA("an area"),
  VOLUME("a volume"),
  POWER("a power"),
  TIME("a time"),
  SPEED("a speed"),
  DENSITY("a density"),
  KINEMATIC_VISCOSITY("a kinematic viscosity"),
  SHARE("a share");

  private final String words;

  Dimension(String words) {
    this.words = words;
  }

  /** "a length": for messages. */
  public String words() {
    return words;
  }

  /** The units that measure it, in the order in which to offer them. */
  public List<Unit> units() {
    return Arrays.stream(Unit.values()).filter(unit -> unit.dimension() == this).toList();
  }
}
