package rillwright.solver.law.filter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.minor.PowerLoss;

/** Mats that take 0.4 m at 1 L/s, as its square, in a box of 0.1 m: worked by hand. */
class OpenTopLawTest {
  private static final OpenTopLaw LAW = new OpenTopLaw(new PowerLoss(0.4, 1e-3, 2), 0.1);

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0",
    "0.00025, 0.025, 0.00025",
    "0.0005, 0.1, 0.0005",
    "0.001, 0.1, 0.0005",
    "0.1, 0.1, 0.0005"
  })
  void takesNoMoreThanItIsHigh(double flow, double loss, double passed) {
    assertEquals(loss, LAW.headLossAt(flow), 1e-12);
    assertEquals(-loss, LAW.headLossAt(-flow), 1e-12);
    assertEquals(passed, LAW.passedAt(flow), 1e-12);
  }

  @Test
  void whatGoesOverCostsNothingMore() {
    assertEquals(0, LAW.slopeAt(1e-3));
    assertEquals(2 * 0.4 * 2.5e-4 / 1e-6, LAW.slopeAt(2.5e-4), 1e-9);
  }
}
