package rillwright.solver.trial;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;
import rillwright.solver.law.pump.BestEfficiency;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.SteadyState;

/**
 * A pump that runs far from the flow of its best efficiency: below or above the share of it that
 * counts as a good place. Below the least flow of a pump that is the finding. Common practice, no
 * source.
 */
public final class FarFromBest {
  private static final double LEAST_SHARE = 0.7;
  private static final double GREATEST_SHARE = 1.2;

  /** As shares are reported, so that what is reported to be in the band is. */
  private static final double PERCENT = 100;

  /** Of its finding. */
  public static final String CODE = "far-from-best-efficiency";

  private FarFromBest() {}

  /** Whether a finding is one of these. */
  public static boolean isIt(Finding finding) {
    return finding.code().equals(CODE);
  }

  /** The findings for all pumps as they run in a state. */
  public static List<Finding> in(SteadyState state) {
    return state.network().placed(Pump.class).stream()
        .flatMap(
            pump ->
                find(pump.line().name().value(), pump.part().set(), state.part(pump).flowM3PerS())
                    .stream())
        .toList();
  }

  /**
   * The finding for a flow of pumps, m³/s; empty if all is well, nothing flows, or the sheet gives
   * no power.
   */
  static Optional<Finding> find(String line, PumpSet set, double flowM3PerS) {
    OptionalDouble share = BestEfficiency.shareOf(flowM3PerS, set);
    if (share.isEmpty() || flowM3PerS <= 0 || BestEfficiency.isBelowMinimum(share)) {
      return Optional.empty();
    }
    double shown = Math.rint(PERCENT * share.getAsDouble()) / PERCENT;
    return shown < LEAST_SHARE || shown > GREATEST_SHARE
        ? Optional.of(at(line, share.getAsDouble()))
        : Optional.empty();
  }

  private static Finding at(String line, double share) {
    return Finding.of(Severity.ADVICE, CODE, line, "The pump in \"" + line + "\" runs at ")
        .share("shareOfBestEfficiencyFlow", share)
        .then(" of the flow of its best efficiency; ")
        .share("usualLeastShare", LEAST_SHARE)
        .then(" to ")
        .share("usualGreatestShare", GREATEST_SHARE)
        .then(" is recommended, since it wears sooner outside (common practice).");
  }
}
