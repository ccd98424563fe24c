package rillwright.solver.study.pipechoice;

import java.util.List;

/**
 * Sizes tried without a pump.
 *
 * @param ranked by the cost of the pipe
 */
public record GravityChoice(List<GravityPipe> ranked) implements RankedPipes<GravityPipe> {
  public GravityChoice {
    ranked = List.copyOf(ranked);
  }
}
