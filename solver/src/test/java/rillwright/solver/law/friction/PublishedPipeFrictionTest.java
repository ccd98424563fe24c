package rillwright.solver.law.friction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import rillwright.solver.law.Bore;

/** Pipes of textbooks. */
class PublishedPipeFrictionTest {

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/published/pipe-friction.csv", useHeadersInDisplayName = true)
  void agreesWithThePrintedAnswer(ArgumentsAccessor row) {
    Bore bore = new Bore(row.getDouble(1));
    double length = row.get(2) == null ? 1 : row.getDouble(2);
    DarcyWeisbach pipe = new DarcyWeisbach(length, bore, row.getDouble(3), row.getDouble(4));
    double flow = row.get(5) == null ? row.getDouble(6) : row.getDouble(5) * bore.areaM2();
    if (row.get(7) != null) {
      assertEquals(row.getDouble(7), pipe.darcyFrictionFactorAt(flow), row.getDouble(8));
    }
    if (row.get(9) != null) {
      assertEquals(row.getDouble(9), pipe.headLossAt(flow), row.getDouble(10));
    }
    assertTrue(row.get(7) != null || row.get(9) != null, "nothing printed to compare with");
  }

  /**
   * Massey, B. S. and Ward-Smith, A. J., Mechanics of Fluids, ex. 2, p. 255 (read in a published
   * transcription): 5 m of head through 120 m of 100 mm, k 0.25 mm, ν 1e-5 m²/s: 0.0126 m³/s.
   */
  @Test
  void printedFlowTakesTheGivenHead() {
    DarcyWeisbach pipe = new DarcyWeisbach(120, new Bore(0.1), 0.00025, 1e-5);
    assertTrue(pipe.headLossAt(0.01255) < 5);
    assertTrue(pipe.headLossAt(0.01265) > 5);
  }

  /**
   * The same, ex. 3, p. 256: 9 m of head at 85 L/s through 180 m with k 0.15 mm, ν 1.14e-6 m²/s
   * asks for a bore of 0.187 m.
   */
  @Test
  void printedBoreTakesTheGivenHead() {
    assertTrue(new DarcyWeisbach(180, new Bore(0.1865), 0.00015, 1.14e-6).headLossAt(0.085) > 9);
    assertTrue(new DarcyWeisbach(180, new Bore(0.1875), 0.00015, 1.14e-6).headLossAt(0.085) < 9);
  }
}
