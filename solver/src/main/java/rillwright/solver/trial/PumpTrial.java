package rillwright.solver.trial;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.finding.Finding;
import rillwright.solver.law.pump.BestEfficiency;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.steady.SteadyState;

/**
 * A pump tried in a network.
 *
 * @param setup which, how many, at what speed
 * @param set the same as the balance knows it
 * @param state what flows where with it, the valves as they stand
 * @param operating where it runs then
 * @param verdict whether it gives the falls their targets
 * @param findings what the crew should know where it is to run
 */
public record PumpTrial(
    PumpSetup setup,
    PumpSet set,
    SteadyState state,
    RunningPoint operating,
    Verdict verdict,
    List<Finding> findings) {
  public PumpTrial {
    findings = List.copyOf(findings);
  }

  /** Where it would run day by day: throttled, if it meets the targets so. */
  public RunningPoint inUse() {
    return verdict.throttled().orElse(operating);
  }

  /** What flows where then. */
  public SteadyState stateInUse() {
    return verdict.throttledState().orElse(state);
  }

  /** Its flow as a share of its published range, the valves as they stand. */
  public double shareOfRange() {
    return shareOfRange(operating);
  }

  /** A flow of it as a share of its published range. */
  public double shareOfRange(RunningPoint point) {
    return point.flowM3PerS() / set.publishedRangeM3PerS();
  }

  /**
   * Its flow, the valves as they stand, as a share of its best-efficiency flow; empty if the sheet
   * gives no power.
   */
  public OptionalDouble shareOfBestEfficiencyFlow() {
    return shareOfBestEfficiencyFlow(operating);
  }

  /** A flow of it as a share of its best-efficiency flow; empty if the sheet gives no power. */
  public OptionalDouble shareOfBestEfficiencyFlow(RunningPoint point) {
    return BestEfficiency.shareOf(point.flowM3PerS(), set);
  }
}
