package rillwright.solver.study.pumpchoice;

import java.util.List;
import rillwright.solver.trial.Demand;
import rillwright.solver.trial.Ranking;
import rillwright.solver.trial.RatedTrial;

/**
 * Pumps tried and ranked.
 *
 * @param demand what the targets ask for
 * @param ranking of the pumps
 */
public record PumpChoice(Demand demand, Ranking ranking) {

  /** The pumps, the best first. */
  public List<RatedTrial> ranked() {
    return ranking.ranked();
  }

  /** Models with which the network has no balanced state. */
  public List<String> leftOut() {
    return ranking.leftOut();
  }
}
