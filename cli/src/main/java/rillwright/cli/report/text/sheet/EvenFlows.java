package rillwright.cli.report.text.sheet;

import java.util.ArrayList;
import java.util.List;
import rillwright.curves.unit.Unit;

/** Round flows at which to tell a curve. */
final class EvenFlows {
  private static final int MOST_ROWS = 11;
  private static final double[] ROUND = {1, 2, 2.5, 5, 10};

  private EvenFlows() {}

  /** From none to a flow, m³/s, in equal steps that are round in a unit; ten steps at most. */
  static List<Double> upTo(double lastM3PerS, Unit unit) {
    double last = unit.fromSi(lastM3PerS);
    double step = step(last);
    List<Double> flows = new ArrayList<>();
    for (int i = 0; i < MOST_ROWS && i * step <= last * (1 + 1e-9); i++) {
      flows.add(Math.min(lastM3PerS, unit.toSi(i * step)));
    }
    return flows;
  }

  private static double step(double last) {
    double least = last / (MOST_ROWS - 1) * (1 - 1e-9);
    double decade = Math.pow(10, Math.floor(Math.log10(least)));
    for (double round : ROUND) {
      if (round * decade >= least) {
        return round * decade;
      }
    }
    return 10 * decade;
  }
}
