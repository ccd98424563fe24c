package rillwright.cli.report.text.visit;

import rillwright.cli.report.units.VisitTools;

/**
 * Flow caught in a vessel and timed.
 *
 * @param vessel its words
 * @param seconds how long it takes
 * @param share by which the flow may be off then
 */
record TimedFill(String vessel, double seconds, double share) {
  /** A fill that is quicker than this tells nothing; common practice, no source. */
  private static final double QUICKEST_S = 3;

  /** At this time and below the error is that of starting and stopping the watch. */
  private static final double QUICK_S = 4;

  private static final double QUICK_SHARE = 0.15;

  /** From this time on the error is that of the vessel's volume. */
  private static final double SLOW_S = 15;

  private static final double SLOW_SHARE = 0.05;

  /** The way to time a flow; a bucket where it takes long enough, else a barrel. */
  static TimedFill of(double flowM3PerS, VisitTools tools) {
    boolean bucket = flowM3PerS <= tools.bucketUpToM3PerS();
    double seconds = (bucket ? tools.bucketM3() : tools.barrelM3()) / flowM3PerS;
    return new TimedFill(bucket ? tools.bucket() : tools.barrel(), seconds, shareAt(seconds));
  }

  /** ±15 % at 4 s and ±5 % from 15 s, common practice; in between on a straight line. */
  private static double shareAt(double seconds) {
    if (seconds >= SLOW_S) {
      return SLOW_SHARE;
    }
    if (seconds <= QUICK_S) {
      return QUICK_SHARE * QUICK_S / seconds;
    }
    double t = (seconds - QUICK_S) / (SLOW_S - QUICK_S);
    return QUICK_SHARE + t * (SLOW_SHARE - QUICK_SHARE);
  }

  /** Whether it is too quick to be timed. */
  boolean isTooQuick() {
    return seconds < QUICKEST_S;
  }
}
