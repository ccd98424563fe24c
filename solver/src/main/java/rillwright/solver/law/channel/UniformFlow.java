package rillwright.solver.law.channel;

import java.util.function.DoubleUnaryOperator;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Gravity;

/**
 * Depths at which water runs in a channel: the normal one, at which the bed holds back just what
 * the slope gives, and the critical one, at which it runs as fast as a small wave.
 *
 * <p>Source: Chow, V. T. (1959), Open-Channel Hydraulics, sections 4-3 and 6-6 (from memory).
 */
public final class UniformFlow {
  private static final int HALVINGS = 120;
  private static final int DOUBLINGS = 60;

  private UniformFlow() {}

  /** Flow at a depth, m³/s, if it were the normal one. */
  public static double flowM3PerS(ChannelSection section, BedLaw bed, double slope, double depthM) {
    return section.areaM2(depthM) * bed.velocityMPerS(section.hydraulicRadiusM(depthM), slope);
  }

  /**
   * Normal depth, m.
   *
   * @param flowM3PerS 0 or more
   * @param slope greater than 0
   */
  public static double normalDepthM(
      ChannelSection section, BedLaw bed, double slope, double flowM3PerS) {
    Require.positive("slope", slope, "");
    return depthAt(depth -> flowM3PerS(section, bed, slope, depth), flowM3PerS);
  }

  /** Critical depth, m: where Q² T = g A³. */
  public static double criticalDepthM(ChannelSection section, double flowM3PerS) {
    return depthAt(depth -> criticalFlowM3PerS(section, depth), flowM3PerS);
  }

  private static double criticalFlowM3PerS(ChannelSection section, double depthM) {
    return depthM == 0
        ? 0
        : section.areaM2(depthM)
            * Math.sqrt(Gravity.STANDARD_M_PER_S2 * section.meanDepthM(depthM));
  }

  /** Froude number V/√(g A/T), dimensionless, at a flow and a depth above 0. */
  public static double froude(ChannelSection section, double flowM3PerS, double depthM) {
    return flowM3PerS / criticalFlowM3PerS(section, depthM);
  }

  /**
   * Mean depth in a level reach, m, that ends at a drop: one step of the standard-step method from
   * the critical depth there, with the friction of the mean depth.
   *
   * <p>Source: Chow (1959), section 10-4 (from memory). One step is coarse; the depth is meant for
   * the water that is held.
   *
   * @param lengthM of the reach
   */
  public static double levelReachDepthM(
      ChannelSection section, BedLaw bed, double lengthM, double flowM3PerS) {
    double critical = criticalDepthM(section, flowM3PerS);
    if (flowM3PerS == 0) {
      return 0;
    }
    // The mean depth exceeds the critical one by half of what friction takes at the mean depth.
    return depthAt(
        mean -> {
          double slope = 2 * Math.max(0, mean - critical) / lengthM;
          return flowM3PerS(section, bed, slope, mean);
        },
        flowM3PerS);
  }

  /** Where a flow that rises with depth, from none at none, has a value. */
  private static double depthAt(DoubleUnaryOperator flowAt, double flowM3PerS) {
    if (flowM3PerS <= 0) {
      return 0;
    }
    double high = 1;
    for (int i = 0; i < DOUBLINGS && flowAt.applyAsDouble(high) < flowM3PerS; i++) {
      high *= 2;
    }
    double low = 0;
    for (int i = 0; i < HALVINGS && high - low > 1e-16 * high; i++) {
      double middle = (low + high) / 2;
      if (flowAt.applyAsDouble(middle) < flowM3PerS) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
