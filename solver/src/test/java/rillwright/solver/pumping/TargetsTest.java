package rillwright.solver.pumping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rillwright.solver.building.LineParts;
import rillwright.solver.building.LineParts.Pipe;
import rillwright.solver.building.NetworkBuilder;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

class TargetsTest {
  private static final PointName HIGH = new PointName("high");
  private static final PointName LOW = new PointName("low");
  private static final PowerWeir WEIR = new PowerWeir(1.6, 0.75, BrinkRule.FREE_OVERFALL);
  private static final LineParts PIPE = LineParts.in(Pipe.of(0.05, 1.5e-6)).run(8);

  private static final Network TROUGHS =
      new NetworkBuilder()
          .basin("header", 3)
          .fall("high", 2.5, WEIR, 0.002)
          .fall("low", 0.5, WEIR, 0.001)
          .fall("spare", 1, WEIR)
          .line("to high", "header", "high", PIPE)
          .line("to low", "header", "low", PIPE)
          .line("to spare", "header", "spare", PIPE)
          .build();

  private final Targets targets = Targets.of(TROUGHS);

  @Test
  void areThoseOfTheFallsThatHaveAny() {
    assertEquals(List.of(HIGH, LOW), List.copyOf(targets.falls()));
    assertEquals(0.003, targets.sumM3PerS(), 1e-15);
    assertEquals(0.004, targets.times(2).at(HIGH), 1e-15);
    assertFalse(targets.isEmpty());
  }

  @Test
  void worstFallGetsTheLeastShareAndGreatestIsOfTheBest() {
    SteadyState state = SteadyStateFinder.find(TROUGHS);
    double high = state.point(HIGH).outflowM3PerS() / 0.002;
    double low = state.point(LOW).outflowM3PerS() / 0.001;
    assertTrue(high < low);
    assertEquals(HIGH, targets.worstIn(state));
    assertEquals(high, targets.shareAt(HIGH, state), 1e-15);
    assertEquals(low, targets.greatestShareIn(state), 1e-15);
  }

  @Test
  void aHundredthOfAllIsNextToNothing() {
    assertTrue(targets.isNextToNothing(0.000029));
    assertFalse(targets.isNextToNothing(0.000031));
  }

  @Test
  void withoutAnyThereIsNoWorst() {
    Network plain =
        new NetworkBuilder()
            .basin("header", 3)
            .fall("spare", 1, WEIR)
            .line("to spare", "header", "spare", PIPE)
            .build();
    Targets none = Targets.of(plain);
    SteadyState state = SteadyStateFinder.find(plain);
    assertTrue(none.isEmpty());
    assertEquals(0, none.greatestShareIn(state));
    assertThrows(IllegalStateException.class, () -> none.worstIn(state));
  }
}
