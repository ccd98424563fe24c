package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.steady.Sketch.flow;
import static rillwright.solver.steady.Sketch.head;
import static rillwright.solver.steady.Sketch.outflow;
import static rillwright.solver.steady.Sketch.pipe;
import static rillwright.solver.steady.Sketch.pump;
import static rillwright.solver.steady.Sketch.skimmer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;

class ImposedFlowTest {

  @Test
  void aFlowImposedOnALineIsCarriedOverTheFallAtItsEnd() {
    SteadyState state =
        SteadyStateFinder.impose(supplied(), Imposed.flow(new LineName("supply"), 0.004));
    assertEquals(0.004, flow(state, "supply"));
    assertEquals(0.004, outflow(state, "fall"), 1e-17);
    assertEquals(0.004, flow(state, "intake"), 1e-17);
    double crestHead = Math.pow(0.004 / (2.0 / 3 * 0.6 * 0.5 * Math.sqrt(2 * 9.80665)), 2.0 / 3);
    assertEquals(2 + crestHead, head(state, "fall"), 1e-9);
  }

  @Test
  void anImposedFlowStarvesNothing() {
    SteadyState state =
        SteadyStateFinder.impose(supplied(), Imposed.flow(new LineName("supply"), 0.009));
    assertFalse(state.point(new PointName("chamber")).isStarved());
    assertTrue(head(state, "chamber") < -0.05);
  }

  @Test
  void aFlowImposedOutOfAFallReplacesItsWeir() {
    SteadyState state =
        SteadyStateFinder.impose(
            supplied(),
            new Imposed(
                Map.of(new LineName("supply"), 0.004), Map.of(new PointName("fall"), 0.004)));
    assertEquals(0.004, outflow(state, "fall"));
    assertFalse(Sketch.isDetermined(state, "fall"));
  }

  private static Network supplied() {
    return new Sketch()
        .basin("pond", 0)
        .chamber("chamber", -0.05)
        .fall("fall", 2)
        .line("intake", "pond", "chamber", skimmer(0.3, -0.1))
        .line("supply", "chamber", "fall", pump(0, 6, 0.01, 0), pipe(20, 0.08))
        .network();
  }

  @Test
  void theFlowThatALineHasAnywayChangesNothing() {
    List<String> faults = new ArrayList<>();
    int compared = 0;
    for (long seed = 700_000; seed < 700_300; seed++) {
      Network network = RandomNetwork.of(seed);
      SteadyState state;
      try {
        state = SteadyStateFinder.find(network);
      } catch (NoBalance e) {
        continue;
      }
      if (state.points().stream().anyMatch(PointState::isStarved)) {
        continue;
      }
      LineState imposed = state.lines().get((int) (seed % state.lines().size()));
      SteadyState again =
          SteadyStateFinder.impose(
              network, Imposed.flow(imposed.line().name(), imposed.flowM3PerS()));
      double largest =
          state.lines().stream().mapToDouble(line -> Math.abs(line.flowM3PerS())).max().orElse(0);
      for (LineState line : state.lines()) {
        double change = again.line(line.line().name()).flowM3PerS() - line.flowM3PerS();
        compared++;
        if (Math.abs(change) > Math.max(1e-6 * largest, 1e-9)) {
          faults.add("seed " + seed + ", " + line.line().name() + " changes by " + change);
        }
      }
    }
    assertEquals(List.of(), faults);
    assertTrue(compared > 1000);
  }
}
