package rillwright.curves.chart.content;

import java.util.List;

/**
 * Where a pump runs.
 *
 * @param flowM3PerS m³/s, 0 or more
 * @param headM m
 * @param valves how they stand then
 * @param labelLines its numbers in words, such as "3,400 gph at 14.2 ft"; empty for a bare mark
 */
public record OperatingPoint(
    double flowM3PerS, double headM, Valves valves, List<String> labelLines) {
  /** How the valves stand. */
  public enum Valves {
    /** As they are: the pump's curve meets a system curve. */
    AS_THEY_STAND("operating point"),
    /** Holding the falls to their targets. */
    THROTTLED("throttled to the targets");

    private final String words;

    Valves(String words) {
      this.words = words;
    }

    /** What a point is called where they stand so. */
    public String words() {
      return words;
    }
  }

  /** One with the valves as they stand. */
  public OperatingPoint(double flowM3PerS, double headM, List<String> labelLines) {
    this(flowM3PerS, headM, Valves.AS_THEY_STAND, labelLines);
  }

  public OperatingPoint {
    Finite.check("flow", flowM3PerS);
    Finite.check("head", headM);
    labelLines = List.copyOf(labelLines);
    if (flowM3PerS < 0) {
      throw new IllegalArgumentException(
          "an operating point's flow is " + flowM3PerS + "; it must be 0 or more");
    }
  }
}
