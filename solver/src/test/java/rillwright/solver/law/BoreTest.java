package rillwright.solver.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoreTest {

  @Test
  void fullBoreOfOneHundredMillimetresAtOneMetreASecond() {
    Bore bore = new Bore(0.1);
    double flow = Math.PI * 0.05 * 0.05;
    assertEquals(flow, bore.areaM2(), 1e-17);
    assertEquals(1, bore.velocityAt(flow), 1e-15);
    assertEquals(-1, bore.velocityAt(-flow), 1e-15);
    assertEquals(1 / (2 * 9.80665), bore.velocityHeadAt(flow), 1e-16);
    assertEquals(bore.velocityHeadAt(flow), bore.velocityHeadAt(-flow));
  }

  /** Crane, Technical Paper 410, ex. 7.35 as quoted in a published solution: 400 gpm, 4.026 in. */
  @Test
  void agreesWithAPrintedVelocity() {
    Bore bore = new Bore(4.026 * 0.0254);
    assertEquals(10.08, bore.velocityAt(400 * 0.003785411784 / 60) / 0.3048, 0.005);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.05, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatIsNoDiameter(double diameter) {
    assertThrows(IllegalArgumentException.class, () -> new Bore(diameter));
  }
}
