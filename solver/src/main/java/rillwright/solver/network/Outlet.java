package rillwright.solver.network;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.law.minor.NozzleLoss;

/**
 * The end of a pipe, in air or under water.
 *
 * @param elevationM where it ends, m
 * @param levelM level of the water it ends under, m; empty in air
 * @param nozzle its nozzle, if there is one
 * @param targetM3PerS target flow, m³/s, where there is a target
 */
public record Outlet(
    PointName name,
    double elevationM,
    OptionalDouble levelM,
    Optional<Nozzle> nozzle,
    OptionalDouble targetM3PerS)
    implements Point {
  public Outlet {
    Require.given("name of an outlet", name);
    Require.finite("elevation of an outlet", elevationM, "m");
    Require.finite("level at an outlet", levelM, "m");
    Require.given("nozzle of an outlet", nozzle);
    Require.atLeast("target flow", targetM3PerS, 0, "m³/s");
  }

  @Override
  public String kind() {
    return "outlet";
  }

  /** An open end under water is held at that water's level. */
  @Override
  public OptionalDouble heldHeadM() {
    return nozzle.isEmpty() ? levelM : OptionalDouble.empty();
  }

  @Override
  public Optional<Spill> spill() {
    if (heldHeadM().isPresent()) {
      return Optional.empty();
    }
    double leastFlow = levelM.isPresent() ? Double.NEGATIVE_INFINITY : 0;
    HeadLaw law =
        nozzle
            .<HeadLaw>map(n -> new NozzleLoss(n.opening(), n.dischargeCoefficient(), leastFlow))
            .orElse(NoLoss.forwardOnly());
    return Optional.of(new Spill(levelM.orElse(elevationM), law));
  }

  @Override
  public boolean isWayOut() {
    return true;
  }

  @Override
  public EndLoss usualEndLoss() {
    double kLeaving = nozzle.isPresent() ? 0 : 1;
    return new EndLoss(levelM.isPresent() ? 0.5 : 0, kLeaving);
  }
}
