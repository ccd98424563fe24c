package rillwright.curves.chart.content;

import java.util.List;

/**
 * One plot of a chart of several: curves of something up against something across, both as shown.
 *
 * @param acrossTitle below its axis, with the unit; may be empty
 * @param upTitle above its axis, with the unit
 * @param curves one or more
 * @param levels worth a thin line across
 * @param places worth an upright line
 * @param spots worth a mark
 */
public record Panel(
    String acrossTitle,
    String upTitle,
    List<Curve> curves,
    List<Mark> levels,
    List<Mark> places,
    List<Spot> spots) {
  public Panel {
    curves = List.copyOf(curves);
    levels = List.copyOf(levels);
    places = List.copyOf(places);
    spots = List.copyOf(spots);
    if (curves.isEmpty()) {
      throw new IllegalArgumentException("a panel needs a curve");
    }
  }

  /** Across and up, in the units shown. */
  public record Spot(double across, double up) {
    public Spot {
      Finite.check("place", across);
      Finite.check("height", up);
    }
  }

  /**
   * A curve.
   *
   * @param name as the legend shows it; curves of a name look alike in all panels of a chart
   * @param points two or more, in order
   */
  public record Curve(String name, List<Spot> points) {
    public Curve {
      points = List.copyOf(points);
      if (points.size() < 2) {
        throw new IllegalArgumentException("curve \"" + name + "\" needs two points or more");
      }
    }
  }

  /**
   * A line across or upright.
   *
   * @param at its height or place, in the unit shown
   * @param label what it is, in words; may be empty
   */
  public record Mark(double at, String label) {
    public Mark {
      Finite.check("mark", at);
    }
  }
}
