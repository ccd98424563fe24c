package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Lift;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;

/**
 * The slopes of flows by heads on random networks, against balances with a little more and less.
 */
class FlowByHeadTest {
  private static final int SEEDS = 150;
  private static final double STEP_M = 1e-4;

  /**
   * Of what a difference of two balances is good to, and bends of laws leave: no line at a bound is
   * compared.
   */
  private static final double CLOSE = 0.01;

  @Test
  void slopesAreThoseOfTwoBalances() {
    List<String> wrong = new ArrayList<>();
    int compared = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Network network = RandomNetwork.of(seed);
      SteadyState state;
      try {
        state = SteadyStateFinder.find(network);
      } catch (NoBalance none) {
        continue;
      }
      Optional<ToDoubleFunction<LineName>> slopes = state.flowByHead();
      boolean falls =
          state.lines().stream().anyMatch(line -> line.course() instanceof Course.Vented);
      assertEquals(!state.starves() && !falls, slopes.isPresent(), "seed " + seed);
      if (slopes.isEmpty()) {
        continue;
      }
      for (Line line : network.lines()) {
        double slope = slopes.get().applyAsDouble(line.name());
        double wide = byBalances(network, line, STEP_M);
        double close = byBalances(network, line, STEP_M / 10);
        double aside = flow(network, line, -STEP_M) - state.line(line.name()).flowM3PerS();
        boolean isStraight =
            Math.abs(wide - close) < CLOSE * close
                && Math.abs(aside - close * STEP_M) < CLOSE * close * STEP_M;
        if (isStraight && close > 1e-5) {
          compared++;
          if (Math.abs(slope - close) > CLOSE * close) {
            wrong.add("seed " + seed + ", " + line.name() + ": " + slope + ", not " + close);
          }
        }
      }
    }
    assertEquals(List.of(), wrong, () -> String.join("\n", wrong));
    assertTrue(compared > 400, compared + " compared");
  }

  private static double byBalances(Network network, Line line, double stepM) {
    return (flow(network, line, -stepM) - flow(network, line, stepM)) / (2 * stepM);
  }

  /** What flows where a line takes so much more. */
  private static double flow(Network network, Line line, double takesM) {
    List<Part> parts = new ArrayList<>(line.parts());
    parts.add(new Loss(new Lift(-takesM), Optional.empty()));
    Network changed = network.withLines(List.of(line.withParts(parts)));
    try {
      return SteadyStateFinder.find(changed).line(line.name()).flowM3PerS();
    } catch (NoBalance none) {
      return Double.NaN;
    }
  }
}
