package rillwright.solver.law.channel;

import rillwright.solver.invariant.Require;

/**
 * The cross-section of a channel: a level bed between two equal banks. A bank of 0 makes it a
 * rectangle, a bed of 0 a vee.
 *
 * @param bedWidthM width at the bed, m, 0 or more
 * @param bank side slope, horizontal to vertical, 0 or more; bed and bank are not both 0
 */
public record ChannelSection(double bedWidthM, double bank) {
  public ChannelSection {
    Require.atLeast("width of a channel's bed", bedWidthM, 0, "m");
    Require.atLeast("slope of a channel's banks", bank, 0, "");
    Require.positive("sum of bed width and bank", bedWidthM + bank, "");
  }

  /** Wetted area, m², at a depth, m. */
  public double areaM2(double depthM) {
    return (bedWidthM + bank * depthM) * depthM;
  }

  /** Wetted perimeter, m, at a depth, m. */
  public double perimeterM(double depthM) {
    return bedWidthM + 2 * depthM * Math.sqrt(1 + bank * bank);
  }

  /** Width of the water surface, m, at a depth, m. */
  public double surfaceWidthM(double depthM) {
    return bedWidthM + 2 * bank * depthM;
  }

  /** Hydraulic radius, area over wetted perimeter, m, at a depth, m; 0 at none. */
  public double hydraulicRadiusM(double depthM) {
    return depthM == 0 ? 0 : areaM2(depthM) / perimeterM(depthM);
  }

  /** Mean depth, area over surface width, m, at a depth, m. */
  public double meanDepthM(double depthM) {
    return areaM2(depthM) / surfaceWidthM(depthM);
  }
}
