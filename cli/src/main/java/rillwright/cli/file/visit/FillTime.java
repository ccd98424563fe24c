package rillwright.cli.file.visit;

import java.util.OptionalDouble;

/** How closely a flow is known that was caught in a bucket: the shorter it took, the worse. */
final class FillTime {
  /** By how much a watch that is started and stopped by hand is off, s; common practice. */
  private static final double WATCH_S = 0.2;

  /** Of a volume that was measured once and several fills; common practice. */
  private static final double USUAL_SHARE = 0.05;

  private FillTime() {}

  /**
   * Half the width of the 95 % interval, as a share.
   *
   * @param seconds that it took to fill
   * @param within as given; empty for the usual
   */
  static double share(double seconds, OptionalDouble within) {
    return Math.hypot(within.orElse(USUAL_SHARE), WATCH_S / seconds);
  }
}
