package rillwright.curves.chart.content;

import java.util.List;
import java.util.Optional;
import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;

/**
 * Odds: how likely at least a flow is, against the flow, and the shares of variance.
 *
 * @param title one line, shown as plain text
 * @param caption a sentence below it; may be empty
 * @param flowUnit of the flow axis
 * @param falls one or more
 * @param shares of the variance, the largest first; may be empty
 */
public record OddsChart(
    String title, String caption, Unit flowUnit, List<ChanceCurve> falls, List<Share> shares)
    implements Chart {
  public OddsChart {
    falls = List.copyOf(falls);
    shares = List.copyOf(shares);
    if (flowUnit.dimension() != Dimension.FLOW) {
      throw new IllegalArgumentException("the axis of odds is " + flowUnit.symbol());
    }
    if (falls.isEmpty()) {
      throw new IllegalArgumentException("a chart of odds needs a fall");
    }
  }

  /**
   * How likely at least a flow is.
   *
   * @param name of the fall
   * @param percentilesM3PerS flows below which 0 %, 1 %, … 100 % lie, m³/s; 101 that do not fall
   * @param target its target
   */
  public record ChanceCurve(String name, List<Double> percentilesM3PerS, Optional<Target> target) {
    private static final int COUNT = 101;

    public ChanceCurve {
      percentilesM3PerS = List.copyOf(percentilesM3PerS);
      if (percentilesM3PerS.size() != COUNT) {
        throw new IllegalArgumentException(percentilesM3PerS.size() + " percentiles");
      }
      percentilesM3PerS.forEach(flow -> Finite.check("flow", flow));
    }
  }

  /**
   * A target and how likely it is fulfilled.
   *
   * @param flowM3PerS m³/s
   * @param chance 0 to 1
   * @param labelLines both in words
   */
  public record Target(double flowM3PerS, double chance, List<String> labelLines) {
    public Target {
      labelLines = List.copyOf(labelLines);
      Finite.check("target", flowM3PerS);
    }
  }

  /**
   * A part of the spread.
   *
   * @param name what it comes from
   * @param share of the whole, 0 to 1
   * @param label its number in words
   */
  public record Share(String name, double share, String label) {
    public Share {
      Finite.check("share", share);
    }
  }
}
