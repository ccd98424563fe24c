package rillwright.solver.trial;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.LineName;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/**
 * A pump over whose inlet the water stands less deep than its data sheet asks for. The chamber's
 * intake level is taken as the level of the inlet.
 */
final class LowSubmergence {
  private LowSubmergence() {}

  /** The finding for the pump of a line; empty if all is well or its inlet's level is not known. */
  static Optional<Finding> find(PumpOffer offer, LineName line, SteadyState state) {
    OptionalDouble needed = offer.minSubmergenceM();
    PointState point = state.point(state.network().line(line).from());
    if (needed.isEmpty()
        || !(point.point() instanceof Chamber chamber)
        || point.headM().isEmpty()) {
      return Optional.empty();
    }
    double depth = point.headM().getAsDouble() - chamber.intakeM();
    return depth < needed.getAsDouble()
        ? Optional.of(at(chamber.name().value(), depth, needed.getAsDouble()))
        : Optional.empty();
  }

  private static Finding at(String chamber, double depthM, double neededM) {
    return Finding.of(
            Severity.PROBLEM,
            "low-submergence",
            chamber,
            "In \"" + chamber + "\" the water stands ")
        .depth("depth", depthM)
        .then(" over the intake; this pump's data sheet asks for ")
        .depth("needed", neededM)
        .then(". It may draw air. Set it deeper, widen the skimmer, or throttle it.");
  }
}
