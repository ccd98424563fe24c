package rillwright.solver.finding;

import java.util.OptionalDouble;
import rillwright.solver.network.HighPoint;

/** What is found of lines that climb over high points, and of the water there. */
final class HighPointFindings {
  private static final String KEEP_FULL =
      " Lay the pipe lower there, or fit a valve for priming and purging by hand that is closed"
          + " while it runs.";

  private HighPointFindings() {}

  /**
   * A line whose water does not come over a high point.
   *
   * @param lackM by how much the water stays below it with nothing flowing, m
   * @param shutOffHeadM of the line's own pumps upstream of it, m
   */
  static Finding cannotStart(
      String at, HighPoint point, double lackM, OptionalDouble shutOffHeadM) {
    Finding found =
        Finding.of(
                Severity.PROBLEM,
                "cannot-start",
                at,
                "\"" + at + "\" does not start and carries nothing: its water comes ")
            .length("lack", lackM)
            .then(" short of the high point at ")
            .level("elevation", point.elevationM())
            .then(". It takes ");
    Finding pumped =
        shutOffHeadM.isPresent()
            ? found
                .then("a shut-off head of more than ")
                .head("leastShutOff", shutOffHeadM.getAsDouble() + lackM)
                .then(" (this one: ")
                .head("shutOff", shutOffHeadM.getAsDouble())
                .then("), or ")
            : found;
    return pumped
        .then("a pipe that lies more than ")
        .length("lower", lackM)
        .then(" lower there. Primed by hand it runs until it next loses its water.")
        .thenHint();
  }

  /** A line that ends in air at its high point. */
  static Finding vented(String at, HighPoint point, double flowM3PerS, double fullFlowM3PerS) {
    boolean byVent = point.air() == HighPoint.Air.VENTED;
    return Finding.of(
            byVent ? Severity.NOTE : Severity.ADVICE,
            "high-point-vented",
            at,
            (byVent ? "The vent lets air in" : "Air stays")
                + " at the high point of \""
                + at
                + "\" at ")
        .level("elevation", point.elevationM())
        .then(": the water falls from there beside air, and the line carries ")
        .flow("flow", flowM3PerS)
        .then(". Full, as a siphon, it would carry ")
        .flow("fullFlow", fullFlowM3PerS)
        .then(".")
        .then(byVent ? " Keep the vent only where the smaller flow is enough." : KEEP_FULL);
  }

  /** A line under suction at a high point from which the water sweeps the air. */
  static Finding swept(String at, HighPoint point, double ventedFlowM3PerS) {
    return Finding.of(
            Severity.ADVICE,
            "high-point-under-suction",
            at,
            "At the high point of \"" + at + "\" at ")
        .level("elevation", point.elevationM())
        .then(
            " the water is under suction. It is taken as fast enough to sweep the air out; for"
                + " garden pipes that rule is unproven and perhaps too hopeful. With air there the"
                + " line carries ")
        .flow("ventedFlow", ventedFlowM3PerS)
        .then(".")
        .then(KEEP_FULL);
  }

  /** A line that somebody primes. */
  static Finding primed(String at, HighPoint point) {
    return Finding.of(
            Severity.NOTE, "primed-by-hand", at, "\"" + at + "\" runs over its high point at ")
        .level("elevation", point.elevationM())
        .then(
            " only when it has been primed by hand. Prime it again after every stop, unless a foot"
                + " valve or a check valve keeps it full.");
  }

  /**
   * A high point with so much suction that air or vapour comes out of the water.
   *
   * @param parts whether the column parts
   */
  static Finding strongSuction(String at, HighPoint point, double suctionPa, boolean parts) {
    return Finding.of(
            parts ? Severity.PROBLEM : Severity.ADVICE,
            parts ? "column-parts" : "air-out-of-solution",
            at,
            "At the high point of \"" + at + "\" at ")
        .level("elevation", point.elevationM())
        .then(" the water would be ")
        .pressure("suction", suctionPa)
        .then(" below the air's pressure: ")
        .then(
            parts
                ? "it boils there, the column parts, and the flow given is not reached."
                : "air comes out of solution and gathers there.")
        .then(KEEP_FULL);
  }
}
