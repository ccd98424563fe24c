package rillwright.solver.study.pumpchoice;

import java.util.List;
import rillwright.solver.trial.Demand;
import rillwright.solver.trial.RatedTrial;

/**
 * Pumps tried and ranked.
 *
 * @param demand what the wishes ask for
 * @param ranked the best first
 * @param leftOut models with which the network has no balanced state
 */
public record PumpChoice(Demand demand, List<RatedTrial> ranked, List<String> leftOut) {
  public PumpChoice {
    ranked = List.copyOf(ranked);
    leftOut = List.copyOf(leftOut);
  }
}
