package rillwright.cli.study.mend.bound;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import rillwright.solver.network.PointName;

/**
 * What no change of a class can exceed, each fall by itself.
 *
 * @param kind the class
 * @param fallsM3PerS the most that each fall with a target can get, m³/s
 * @param enough whether that is enough for every fall that lacks water
 */
public record Bound(Kind kind, Map<PointName, Double> fallsM3PerS, boolean enough) {
  public Bound {
    fallsM3PerS = Collections.unmodifiableMap(new LinkedHashMap<>(fallsM3PerS));
  }

  /** A class of changes. */
  public enum Kind {
    VALVES("valves"),
    CLEANING("cleaning"),
    FITTINGS("fittings"),
    PUMP_SPEED("pump speed"),
    PIPE_FRICTION("pipe friction"),
    /** All of these together; said of falls whose water comes in several ways. */
    ALL_LOSSES("all losses");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** For programs. */
    public String word() {
      return word;
    }
  }
}
