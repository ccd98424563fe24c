package rillwright.curves.chart.content;

import java.util.List;

/**
 * A pump curve: the head that a pump gives at each flow.
 *
 * @param name as the legend shows it
 * @param published points over the range of its data sheet, two or more, flows rising; drawn solid
 * @param beyond points past that range, beginning with its last; drawn dashed; may be empty
 * @param sheetPoints the points of the data sheet itself, drawn as marks; may be empty
 */
public record PumpCurveSeries(
    String name,
    List<CurvePoint> published,
    List<CurvePoint> beyond,
    List<CurvePoint> sheetPoints) {
  public PumpCurveSeries {
    published = List.copyOf(published);
    beyond = List.copyOf(beyond);
    sheetPoints = List.copyOf(sheetPoints);
    if (published.size() < 2) {
      throw new IllegalArgumentException("curve \"" + name + "\" needs two points or more");
    }
  }
}
