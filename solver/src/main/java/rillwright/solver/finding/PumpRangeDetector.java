package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.law.pump.BestEfficiency;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.SteadyState;

/** Pumps that run where their data sheet says nothing, or near shut-off. */
final class PumpRangeDetector implements Detector {

  /**
   * Share of the published range below which a pump counts as near shut-off; common practice, no
   * source.
   */
  private static final double NEAR_SHUT_OFF_SHARE = 0.10;

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (Placed<Pump> pump : state.network().placed(Pump.class)) {
      double flow = state.part(pump).flowM3PerS();
      check(pump.line().name().value(), pump.part().set(), flow, findings);
    }
    return findings;
  }

  private static void check(String at, PumpSet set, double flow, List<Finding> findings) {
    double range = set.publishedRangeM3PerS();
    if (set.speed() == 0) {
      return;
    }
    OptionalDouble ofBest = BestEfficiency.shareOf(flow, set);
    if (flow > range) {
      findings.add(pastPublishedRange(at, flow, range));
    } else if (flow > 0 && BestEfficiency.isBelowMinimum(ofBest)) {
      findings.add(belowMinimumFlow(at, flow, ofBest.getAsDouble()));
    } else if (flow > 0 && flow < NEAR_SHUT_OFF_SHARE * range) {
      findings.add(nearShutOff(at, flow, flow / range));
    }
    if (set.curve().isLevelled()) {
      findings.add(curveLevelled(at));
    }
  }

  /** A pump beyond the last point of its sheet. */
  private static Finding pastPublishedRange(String at, double flowM3PerS, double lastFlowM3PerS) {
    return Finding.of(
            Severity.ADVICE, "past-published-range", at, "The pump in \"" + at + "\" runs at ")
        .flow("flow", flowM3PerS)
        .then(", past the ")
        .writtenFlow("lastPublishedFlow", lastFlowM3PerS)
        .then(
            " where its published curve ends: its head there is an estimate, and it may be noisy"
                + " and wear. Throttle it, or take a pump made for more flow at less head.");
  }

  /** A pump below the least flow that it should run at for long. */
  private static Finding belowMinimumFlow(String at, double flowM3PerS, double shareOfBest) {
    return Finding.of(
            Severity.ADVICE, "below-minimum-flow", at, "The pump in \"" + at + "\" makes only ")
        .flow("flow", flowM3PerS)
        .then(", ")
        .share("shareOfBestEfficiencyFlow", shareOfBest)
        .then(" of the flow of its best efficiency; below ")
        .share("usualLeastShare", BestEfficiency.MINIMUM_FLOW_SHARE)
        .then(
            " it heats the water and wears (common practice; its maker may ask for more). Take a"
                + " smaller pump, or one with more head.");
  }

  /** A pump near shut-off. */
  private static Finding nearShutOff(String at, double flowM3PerS, double shareOfRange) {
    return Finding.of(
            Severity.ADVICE, "near-shut-off", at, "The pump in \"" + at + "\" makes only ")
        .flow("flow", flowM3PerS)
        .then(", ")
        .share("shareOfRange", shareOfRange)
        .then(
            " of its range: it is near shut-off, where it heats the water and small changes of"
                + " level matter. A pump with more head would run nearer the middle of its curve"
                + " (common practice).");
  }

  /** A pump whose published curve has a hump. */
  private static Finding curveLevelled(String at) {
    return Finding.of(
        Severity.NOTE,
        "curve-levelled",
        at,
        "The published curve of the pump in \""
            + at
            + "\" has a hump: a real pump may hunt there. The curve was levelled for the"
            + " calculation.");
  }
}
