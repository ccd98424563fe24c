package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Skimmer;
import rillwright.solver.pumping.PumpSuction;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.SteadyState;

/** Pumps whose water boils at the inlet, that lose their prime, or that draw air. */
final class SuctionDetector implements Detector {
  /** Least margin of NPSH, m; ours, no source. */
  private static final double LEAST_MARGIN_M = 0.6;

  /** Least margin of NPSH as a share of what is required; common practice. */
  private static final double MARGIN_SHARE = 0.1;

  /** NPSH that pumps without a published figure need at most; common practice, no source. */
  private static final double USUALLY_ENOUGH_M = 4;

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    PumpSuction.listFed(state)
        .forEach(pump -> check(state, state.line(pump.line()), pump, findings));
    return findings;
  }

  private static void check(
      SteadyState state, LineState line, PumpSuction pump, List<Finding> findings) {
    String name = line.line().name().value();
    OptionalDouble has = pump.npshAvailableM();
    OptionalDouble needs = pump.npshRequiredM();
    if (has.isPresent() && needs.isPresent()) {
      double required = needs.getAsDouble();
      double margin = Math.max(LEAST_MARGIN_M, MARGIN_SHARE * required);
      if (has.getAsDouble() < required + margin) {
        findings.add(tooLittle(name, pump, has.getAsDouble(), required, margin));
      }
    } else if (has.isPresent() && has.getAsDouble() < USUALLY_ENOUGH_M) {
      findings.add(little(name, has.getAsDouble()));
    }
    pump.unprimedM().ifPresent(climb -> findings.add(notPrimed(name, climb)));
    OptionalDouble depth = pump.depthM();
    OptionalDouble needed = pump.depthNeededM();
    if (depth.isPresent() && needed.isPresent() && depth.getAsDouble() < needed.getAsDouble()) {
      findings.add(
          lowSubmergence(
              line.line().from().value(),
              depth.getAsDouble(),
              needed.getAsDouble(),
              pump.isDepthOnSheet(),
              isMended(state, line, needed.getAsDouble() - depth.getAsDouble())));
    }
  }

  /** A wider pipe helps only where the suction takes as much as is lacking. */
  private static Finding tooLittle(
      String at, PumpSuction pump, double hasM, double requiredM, double marginM) {
    double lacksM = requiredM + marginM - hasM;
    Finding finding =
        Finding.of(Severity.PROBLEM, "npsh-short", at, "The pump in \"" + at + "\" has ")
            .head("npshAvailable", hasM)
            .then(" of net positive suction head (NPSH); its sheet asks for ")
            .head("npshRequired", requiredM)
            .then(", and this answer asks for a margin of ")
            .head("margin", marginM)
            .then(
                " above that. With less, water boils in it, and it gives less than this answer says.");
    return pump.lossBeforeM().orElse(lacksM) < lacksM
        ? finding
            .then(" Set it lower by ")
            .head("lacking", lacksM)
            .then(" or more: a wider suction pipe alone is not enough.")
        : finding.then(" Set it lower or nearer to the water, or take a wider suction pipe.");
  }

  private static Finding little(String at, double hasM) {
    return Finding.of(Severity.ADVICE, "npsh-low", at, "The pump in \"" + at + "\" has only ")
        .head("npshAvailable", hasM)
        .then(" of net positive suction head (NPSH); below ")
        .head("usuallyEnough", USUALLY_ENOUGH_M)
        .then(
            " many pumps give less than their curve (common practice). Ask for its NPSH required.");
  }

  private static Finding notPrimed(String at, double climbM) {
    return Finding.of(
            Severity.PROBLEM, "not-primed", at, "The suction of the pump in \"" + at + "\" climbs ")
        .length("aboveWater", climbM)
        .then(
            " above the water that feeds it, and nothing holds its prime: the flow given is that of"
                + " a primed pump. Fit a foot valve or a check valve upstream of it, take a pump"
                + " that primes itself from there, or set it below the water.");
  }

  /** Whether the chamber would stand deep enough if its skimmer took nothing. */
  private static boolean isMended(SteadyState state, LineState line, double lacksM) {
    double highestM =
        state.network().points(Basin.class).stream()
            .mapToDouble(Basin::levelM)
            .max()
            .orElse(Double.NEGATIVE_INFINITY);
    double headM = state.point(line.line().from()).headM().orElse(Double.POSITIVE_INFINITY);
    return !state.network().placed(Skimmer.class).isEmpty() && highestM - headM >= lacksM;
  }

  /**
   * The depth that a sheet asks for is one whatever flows; that of a bore is less with less flow.
   *
   * @param skimmer whether a wider skimmer alone would give the depth
   */
  private static Finding lowSubmergence(
      String at, double depthM, double neededM, boolean bySheet, boolean skimmer) {
    String rest =
        skimmer
            ? "Set it deeper, widen the skimmer, or throttle it."
            : bySheet
                ? "Set it deeper, or take a pump that asks for less; neither a wider skimmer nor a"
                    + " valve gives it that depth."
                : "Set it deeper, or throttle it.";
    return Finding.of(
            Severity.PROBLEM, "low-submergence", at, "In \"" + at + "\" the water stands ")
        .depth("depth", depthM)
        .then(
            bySheet
                ? " over the pump's inlet; its data sheet asks for "
                : " over the pump's inlet; an inlet of that bore at that flow asks for ")
        .depth("needed", neededM)
        .then(". It may draw air. " + rest);
  }
}
