package rillwright.curves.chart.content;

import java.util.List;
import rillwright.curves.unit.Unit;

/**
 * Head curves that are known within a band, over what was read of them. All values are SI; the
 * units say how they are shown.
 *
 * @param title one line, shown as plain text
 * @param caption a sentence below it; may be empty
 * @param flowUnit of the flow axis
 * @param headUnit of the head axis, a length
 * @param curves one or more
 */
public record BandChart(
    String title, String caption, Unit flowUnit, Unit headUnit, List<BandCurve> curves)
    implements Chart {
  public BandChart {
    curves = List.copyOf(curves);
    if (curves.isEmpty()) {
      throw new IllegalArgumentException("a chart of bands needs a curve");
    }
  }

  /**
   * A curve.
   *
   * @param name as the legend shows it
   * @param low lower edge of its band, two points or more, flows rising
   * @param middle the curve itself, two points or more
   * @param high upper edge, at the flows of the lower
   * @param spots what was read
   */
  public record BandCurve(
      String name,
      List<CurvePoint> low,
      List<CurvePoint> middle,
      List<CurvePoint> high,
      List<Spot> spots) {
    public BandCurve {
      low = List.copyOf(low);
      middle = List.copyOf(middle);
      high = List.copyOf(high);
      spots = List.copyOf(spots);
      if (middle.size() < 2 || low.size() < 2 || high.size() != low.size()) {
        throw new IllegalArgumentException(
            "a band needs a curve and as many points below as above, two or more");
      }
    }
  }

  /**
   * A reading.
   *
   * @param at what it showed
   * @param flowWithinM3PerS half the width of its interval, m³/s; 0 for none
   * @param headWithinM the same of the head, m
   * @param isFlowRead whether its flow was read, or is only expected
   * @param labelLines what it is, in words
   */
  public record Spot(
      CurvePoint at,
      double flowWithinM3PerS,
      double headWithinM,
      boolean isFlowRead,
      List<String> labelLines) {
    public Spot {
      labelLines = List.copyOf(labelLines);
      Finite.check("interval of flow", flowWithinM3PerS);
      Finite.check("interval of head", headWithinM);
    }
  }
}
