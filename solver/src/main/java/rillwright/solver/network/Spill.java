package rillwright.solver.network;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.HeadLaw;

/**
 * The way out of the network at a point: water at a total head above {@code levelM} by the law's
 * head passes.
 *
 * @param levelM crest, nozzle or level outside, m
 * @param law head above the level at a flow out
 */
public record Spill(double levelM, HeadLaw law) {
  public Spill {
    Require.finite("level of a spill", levelM, "m");
    Require.given("law of a spill", law);
  }
}
