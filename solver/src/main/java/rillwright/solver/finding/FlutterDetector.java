package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Placed;
import rillwright.solver.steady.SteadyState;

/**
 * Swing check valves through which the water runs too slowly to hold the disc open.
 *
 * <p>Source: Crane, Technical Paper 410, swing check valves of K = 100 f_T: least velocity for a
 * disc fully lifted 35 √v ft/s, v the specific volume in ft³/lb (seen in a valve maker's sizing
 * page). Hydraulic Institute, Engineering Data Book: check valves are only partly open, and K is
 * higher, below 4.6 m/s (15 ft/s).
 */
final class FlutterDetector implements Detector {
  private static final double FOOT_M = 0.3048;
  private static final double POUND_KG = 0.45359237;

  /** 35 ft/s at 1 ft³/lb, as m/s at 1 m³/kg. */
  private static final double HELD_OPEN =
      35 * FOOT_M / Math.sqrt(FOOT_M * FOOT_M * FOOT_M / POUND_KG);

  /** Below this the Hydraulic Institute calls check valves partly open: 15 ft/s. */
  private static final double FULLY_OPEN_M_PER_S = 15 * FOOT_M;

  @Override
  public List<Finding> findIn(SteadyState state) {
    double heldOpenMPerS = HELD_OPEN / Math.sqrt(state.network().water().densityKgPerM3());
    List<Finding> findings = new ArrayList<>();
    for (Placed<CheckValve> valve : state.network().placed(CheckValve.class)) {
      double flow = state.part(valve).flowM3PerS();
      double velocity = valve.part().inside().velocityAt(flow);
      if (valve.part().swings() && velocity > 0 && velocity < heldOpenMPerS) {
        findings.add(flutters(valve.line().name().value(), flow, velocity, heldOpenMPerS));
      }
    }
    return findings;
  }

  private static Finding flutters(
      String at, double flowM3PerS, double velocityMPerS, double heldOpenMPerS) {
    return Finding.of(
            Severity.ADVICE,
            "check-valve-flutters",
            at,
            "The swing check valve in \"" + at + "\" is not held open: water runs through it at ")
        .velocity("velocity", velocityMPerS)
        .then(", and its disc stays up from ")
        .velocity("heldOpenVelocity", heldOpenMPerS)
        .then(" on. Below that it flutters, wears and takes more head; a bore of ")
        .depth("heldOpenBore", Math.sqrt(4 * flowM3PerS / (Math.PI * heldOpenMPerS)))
        .then(" or less is held open at this flow. Fully open takes about ")
        .velocityLimit("fullyOpenVelocity", FULLY_OPEN_M_PER_S)
        .then(". Another kind of check valve does not depend on it.");
  }
}
