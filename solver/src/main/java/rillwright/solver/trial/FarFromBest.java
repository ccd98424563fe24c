package rillwright.solver.trial;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Wording;
import rillwright.solver.law.pump.PumpSet;

/**
 * A pump that runs far from the flow of its best efficiency: below or above the share of it that
 * counts as a good place. Common practice, no source.
 *
 * @param at its line
 * @param share of the flow of its best efficiency
 */
record FarFromBest(String at, double share) implements Finding {
  private static final double LEAST_SHARE = 0.7;
  private static final double GREATEST_SHARE = 1.2;

  /** As shares are told, so that what is told to be in the band is. */
  private static final double PERCENT = 100;

  /**
   * The finding for a flow of pumps, m³/s; empty if all is well, nothing flows, or the sheet gives
   * no power.
   */
  static Optional<Finding> find(String line, PumpSet set, double flowM3PerS) {
    OptionalDouble share = BestEfficiency.shareOf(flowM3PerS, set);
    if (share.isEmpty() || flowM3PerS <= 0) {
      return Optional.empty();
    }
    double told = Math.rint(PERCENT * share.getAsDouble()) / PERCENT;
    return told < LEAST_SHARE || told > GREATEST_SHARE
        ? Optional.of(new FarFromBest(line, share.getAsDouble()))
        : Optional.empty();
  }

  @Override
  public String code() {
    return "far-from-best-efficiency";
  }

  @Override
  public String message(Wording wording) {
    return "It would run at "
        + wording.share(share)
        + " of the flow of its best efficiency; "
        + wording.share(LEAST_SHARE)
        + " to "
        + wording.share(GREATEST_SHARE)
        + " is a good place (common practice). A "
        + (share > 1 ? "larger" : "smaller")
        + " pump, or one made for "
        + (share > 1 ? "less" : "more")
        + " head, may draw less for the same water.";
  }
}
