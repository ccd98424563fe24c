package rillwright.solver.law.pump;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.law.Gravity;

/**
 * A data sheet that cannot be right: at some flow the water takes up more power than comes in by
 * the wire. Named is the worst of its published points or, where these are right, the worst flow
 * between them.
 *
 * @param flowM3PerS where, m³/s
 * @param waterPowerW ρ g Q H, W
 * @param powerW electrical input, W
 */
public record MoreOutThanIn(double flowM3PerS, double waterPowerW, double powerW) {
  private static final int STEPS = 100;

  /** What is impossible about a curve; empty if nothing is, or it gives no power. */
  public static Optional<MoreOutThanIn> find(PumpCurve curve, double densityKgPerM3) {
    List<Double> published = curve.points().stream().map(PumpPoint::flowM3PerS).toList();
    List<Double> between = new ArrayList<>();
    double first = published.get(0);
    for (int i = 0; i <= STEPS; i++) {
      between.add(first + (curve.lastFlowM3PerS() - first) * i / STEPS);
    }
    return worst(curve, published, densityKgPerM3).or(() -> worst(curve, between, densityKgPerM3));
  }

  private static Optional<MoreOutThanIn> worst(
      PumpCurve curve, List<Double> flows, double densityKgPerM3) {
    Optional<MoreOutThanIn> worst = Optional.empty();
    for (double flow : flows) {
      double in = curve.powerAt(flow).orElse(Double.POSITIVE_INFINITY);
      double out = densityKgPerM3 * Gravity.STANDARD_M_PER_S2 * flow * curve.headAt(flow);
      MoreOutThanIn found = new MoreOutThanIn(flow, out, in);
      if (out > in && (worst.isEmpty() || found.isWorseThan(worst.get()))) {
        worst = Optional.of(found);
      }
    }
    return worst;
  }

  private boolean isWorseThan(MoreOutThanIn other) {
    return waterPowerW * other.powerW > other.waterPowerW * powerW;
  }
}
