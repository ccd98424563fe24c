package rillwright.curves.chart.content;

import java.util.List;

/**
 * The electrical power that a pump draws, read on the right axis in watts.
 *
 * @param name as the legend shows it
 * @param points two or more, flows rising
 */
public record PowerSeries(String name, List<PowerPoint> points) {
  public PowerSeries {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("curve \"" + name + "\" needs two points or more");
    }
  }

  /**
   * A point of it.
   *
   * @param flowM3PerS m³/s, 0 or more
   * @param powerW W, 0 or more
   */
  public record PowerPoint(double flowM3PerS, double powerW) {
    public PowerPoint {
      Finite.check("flow", flowM3PerS);
      Finite.check("power", powerW);
      if (flowM3PerS < 0 || powerW < 0) {
        throw new IllegalArgumentException("a power curve's flow and power must be 0 or more");
      }
    }
  }
}
