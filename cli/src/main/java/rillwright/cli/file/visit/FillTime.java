package rillwright.cli.file.visit;

import java.util.OptionalDouble;

/** How closely a flow is known that was caught in a bucket: the shorter it took, the worse. */
public final class FillTime {
  /** By how much a watch that is started and stopped by hand is off, s; common practice. */
  private static final double WATCH_S = 0.2;

  /** Of a volume that was measured once and several fills; common practice. */
  private static final double USUAL_SHARE = 0.05;

  /** Of the area of a chamber, and by how much a ruler in moving water is off, m; likewise. */
  private static final double AREA_SHARE = 0.05;

  private static final double RULER_M = 0.003;

  private FillTime() {}

  /** Half the width of the 95 % interval of a volume by area and drop of level, as a share. */
  static double usualShareOfDrop(double dropM) {
    return Math.hypot(AREA_SHARE, RULER_M / dropM);
  }

  /**
   * Half the width of the 95 % interval, as a share.
   *
   * @param seconds that it took to fill
   * @param within as given; empty for the usual
   */
  public static double share(double seconds, OptionalDouble within) {
    return Math.hypot(within.orElse(USUAL_SHARE), WATCH_S / seconds);
  }
}
