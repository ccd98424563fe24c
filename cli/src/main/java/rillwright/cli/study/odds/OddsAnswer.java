package rillwright.cli.study.odds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Effort;
import rillwright.cli.study.Job;
import rillwright.cli.study.RunningFigures;
import rillwright.solver.network.Network;
import rillwright.solver.study.uncertainty.Odds;

/**
 * The odds of a project.
 *
 * @param job that it is about
 * @param network with the middle of every quantity
 * @param unknowns what is not known exactly, in the order of the odds' drivers
 * @param idle what is not known exactly and has no say in what flows
 * @param odds what comes out
 * @param takes what it takes with the middle of every quantity; empty if that has no balance
 * @param contradiction what is wrong with the first sample whose values contradict each other
 * @param effort of balancing the samples
 */
public record OddsAnswer(
    Job job,
    Network network,
    List<Unknown> unknowns,
    List<Unknown> idle,
    Odds odds,
    Optional<RunningFigures> takes,
    Optional<String> contradiction,
    Effort effort)
    implements Answer {
  public OddsAnswer {
    unknowns = List.copyOf(unknowns);
    idle = List.copyOf(idle);
  }

  /**
   * A quantity that is not known exactly.
   *
   * @param address as a change would name it: {@code lines.intake.skimmer.clogged}
   * @param what which one, for a person: {@code line "intake": skimmer: clogged}
   * @param written what the file says: {@code 0 % .. 40 %}
   */
  public record Unknown(String address, String what, String written) {}

  /** An unknown and how much it matters. */
  public record RankedDriver(Unknown unknown, Odds.Driver driver) {}

  /**
   * The largest share of variance first; in the order of the file where nothing tells them apart.
   */
  public List<RankedDriver> ranked() {
    List<RankedDriver> ranked = new ArrayList<>();
    for (int i = 0; i < unknowns.size(); i++) {
      ranked.add(new RankedDriver(unknowns.get(i), odds.drivers().get(i)));
    }
    ranked.sort(
        Comparator.comparingDouble((RankedDriver ranks) -> ranks.driver().varianceShare())
            .reversed());
    return ranked;
  }

  /** The share of the spread that no unknown explains by itself, 0 to 1. */
  public double together() {
    double alone = odds.drivers().stream().mapToDouble(Odds.Driver::varianceShare).sum();
    return alone > 0 ? Math.max(0, 1 - alone) : 0;
  }
}
