package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.SteadyState;

/** Pumps that run where their data sheet says nothing, or near shut-off. */
final class PumpRangeDetector implements Detector {
  /**
   * Share of the published range below which a pump counts as near shut-off; common practice, no
   * source.
   */
  static final double NEAR_SHUT_OFF_SHARE = 0.10;

  /** A pump beyond the last point of its sheet. */
  record PastPublishedRange(String at, double flowM3PerS, double lastFlowM3PerS)
      implements Finding {
    @Override
    public String code() {
      return "past-published-range";
    }

    @Override
    public String message(Wording wording) {
      return "The pump in \""
          + at
          + "\" runs at "
          + wording.flow(flowM3PerS)
          + ", past the "
          + wording.writtenFlow(lastFlowM3PerS)
          + " where its published curve ends: what it does there is a guess, and it may be noisy and wear. Throttle"
          + " it, or take a pump made for more flow at less head.";
    }
  }

  /** A pump near shut-off. */
  record NearShutOff(String at, double flowM3PerS, double shareOfRange) implements Finding {
    @Override
    public String code() {
      return "near-shut-off";
    }

    @Override
    public String message(Wording wording) {
      return "The pump in \""
          + at
          + "\" makes only "
          + wording.flow(flowM3PerS)
          + ", "
          + wording.share(shareOfRange)
          + " of its range: it is near shut-off, where it heats the water and small changes of level matter. A pump"
          + " with more head would stand better (middle of the curve, common practice).";
    }
  }

  /** A pump whose published curve has a hump. */
  record CurveLevelled(String at) implements Finding {
    @Override
    public String code() {
      return "curve-levelled";
    }

    @Override
    public String message(Wording wording) {
      return "The published curve of the pump in \""
          + at
          + "\" has a hump: a real pump may hunt there. The curve was levelled for the calculation.";
    }
  }

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (LineState line : state.lines()) {
      for (PartState part : line.parts()) {
        if (part.part() instanceof Pump pump) {
          check(line.line().name().value(), pump.set(), part.flowM3PerS(), findings);
        }
      }
    }
    return findings;
  }

  private static void check(String at, PumpSet set, double flow, List<Finding> findings) {
    double range = set.publishedRangeM3PerS();
    if (set.speed() == 0) {
      return;
    }
    if (flow > range) {
      findings.add(new PastPublishedRange(at, flow, range));
    } else if (flow > 0 && flow < NEAR_SHUT_OFF_SHARE * range) {
      findings.add(new NearShutOff(at, flow, flow / range));
    }
    if (set.curve().isLevelled()) {
      findings.add(new CurveLevelled(at));
    }
  }
}
