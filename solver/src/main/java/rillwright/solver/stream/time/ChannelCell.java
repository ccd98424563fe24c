package rillwright.solver.stream.time;

import rillwright.solver.law.channel.ChannelSection;

/**
 * A length of a reach; its level is its depth.
 *
 * @param section of it
 * @param lengthM of it
 */
record ChannelCell(ChannelSection section, double lengthM) implements Store {
  /** A vee without water has no surface; this deep it begins to have one. */
  static final double FILM_M = 1e-4;

  @Override
  public double volumeM3(double depthM) {
    return section.areaM2(depthM) * lengthM;
  }

  @Override
  public double areaM2(double depthM) {
    double least = section.bedWidthM() > 0 ? 0 : FILM_M / 10;
    return section.surfaceWidthM(Math.max(least, depthM)) * lengthM;
  }

  /** Depth before any water came. */
  double emptyDepthM() {
    return section.bedWidthM() > 0 ? 0 : FILM_M;
  }
}
