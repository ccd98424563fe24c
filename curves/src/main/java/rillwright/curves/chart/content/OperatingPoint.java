package rillwright.curves.chart.content;

import java.util.List;

/**
 * Where a pump curve and a system curve meet.
 *
 * @param flowM3PerS m³/s, 0 or more
 * @param headM m
 * @param labelLines its numbers in words, such as "3,400 gph at 14.2 ft"; empty for a bare mark
 */
public record OperatingPoint(double flowM3PerS, double headM, List<String> labelLines) {
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
