package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.steady.Sketch.flow;
import static rillwright.solver.steady.Sketch.head;
import static rillwright.solver.steady.Sketch.pump;
import static rillwright.solver.steady.Sketch.quadratic;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.network.Filter;

/** An open filter, against closed forms. */
class OpenFilterTest {

  private static Filter filter(double clogged) {
    return new Filter(new PowerLoss(0.02, 1e-3, 2), clogged, OptionalDouble.of(0.1), 0);
  }

  /** Between waters 1 m apart: Q = √((1 − 0.1) / k) once it runs over, however dirty it is. */
  @ParameterizedTest
  @ValueSource(doubles = {0.8, 0.95, 1})
  void itTakesItsHeightAndNoMore(double clogged) {
    double k = 1e5;
    SteadyState state =
        new Sketch()
            .basin("upper", 1)
            .basin("lower", 0)
            .line("way", "upper", "lower", filter(clogged), quadratic(k))
            .solve();
    assertEquals(Math.sqrt(0.9 / k), flow(state, "way"), 1e-12);
  }

  /** A pump downstream of it in a chamber 0.2 m deep draws no air: the water stands 0.1 m lower. */
  @ParameterizedTest
  @ValueSource(doubles = {0.8, 1})
  void aDirtyOneDoesNotStarveThePump(double clogged) {
    SteadyState state =
        new Sketch()
            .basin("pond", 0)
            .chamber("chamber", -0.2)
            .outlet("end", 1)
            .line("in", "pond", "chamber", filter(clogged))
            .line("up", "chamber", "end", pump(0, 5, 0.01, 0), quadratic(1e5))
            .solve();
    assertFalse(state.starves());
    assertEquals(-0.1, head(state, "chamber"), 1e-9);
    assertTrue(flow(state, "up") > 3e-3);
  }
}
