package rillwright.curves.chart.content;

import java.util.List;

/**
 * A system curve: the head that a network takes at each flow.
 *
 * @param name as the legend shows it
 * @param points two or more, flows rising
 */
public record CurveSeries(String name, List<CurvePoint> points) {
  public CurveSeries {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("curve \"" + name + "\" needs two points or more");
    }
  }
}
