package rillwright.cli.study.jobsheet.card;

import java.util.OptionalDouble;
import rillwright.cli.file.visit.FillTime;
import rillwright.cli.study.jobsheet.card.CardReading.Fill;
import rillwright.cli.study.jobsheet.card.CardReading.Refill;
import rillwright.cli.study.jobsheet.card.CardReading.Vessel;
import rillwright.cli.study.jobsheet.card.CardReading.What;
import rillwright.solver.study.diagnosis.reading.Tolerance;

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

  /** The way to time a flow: a bucket where it takes long enough, else a barrel, else a pool. */
  static TimedFlow of(double flowM3PerS, CrewTools tools) {
    boolean bucket = flowM3PerS <= tools.bucketUpToM3PerS();
    double volume = bucket ? tools.bucketM3() : tools.barrelM3();
    double seconds = volume / flowM3PerS;
    if (seconds < QUICKEST_S) {
      return new TimedFlow(
          new Refill(tools.poolAreaM2(), tools.poolDepthM()),
          tools.poolAreaM2() * tools.poolDepthM() / flowM3PerS,
          Tolerance.FLOW.share());
    }
    return new TimedFlow(
        new Fill(bucket ? Vessel.BUCKET : Vessel.BARREL, volume),
        seconds,
        FillTime.share(seconds, OptionalDouble.empty()));
  }
}
