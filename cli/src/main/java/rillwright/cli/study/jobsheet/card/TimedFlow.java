package rillwright.cli.study.jobsheet.card;

import rillwright.cli.study.jobsheet.card.CardReading.Fill;
import rillwright.cli.study.jobsheet.card.CardReading.Refill;
import rillwright.cli.study.jobsheet.card.CardReading.Vessel;
import rillwright.cli.study.jobsheet.card.CardReading.What;

/**
 * Flow caught in a vessel and timed or, where that is too quick, a pool that fills up.
 *
 * @param what fills
 * @param seconds how long it takes
 * @param share by which the flow may be off then
 */
record TimedFlow(What what, double seconds, double share) {
  /** A fill that is quicker than this tells nothing; common practice, no source. */
  private static final double QUICKEST_S = 3;

  /** At this time and below the error is that of starting and stopping the watch. */
  private static final double QUICK_S = 4;

  private static final double QUICK_SHARE = 0.15;

  /** From this time on the error is that of the vessel's volume. */
  private static final double SLOW_S = 15;

  private static final double SLOW_SHARE = 0.05;

  private static final double REFILL_SHARE = 0.08;

  /** The way to time a flow: a bucket where it takes long enough, else a barrel, else a pool. */
  static TimedFlow of(double flowM3PerS, CrewTools tools) {
    boolean bucket = flowM3PerS <= tools.bucketUpToM3PerS();
    double volume = bucket ? tools.bucketM3() : tools.barrelM3();
    double seconds = volume / flowM3PerS;
    if (seconds < QUICKEST_S) {
      return new TimedFlow(
          new Refill(tools.poolAreaM2(), tools.poolDepthM()),
          tools.poolAreaM2() * tools.poolDepthM() / flowM3PerS,
          REFILL_SHARE);
    }
    return new TimedFlow(
        new Fill(bucket ? Vessel.BUCKET : Vessel.BARREL, volume), seconds, shareAt(seconds));
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
}
