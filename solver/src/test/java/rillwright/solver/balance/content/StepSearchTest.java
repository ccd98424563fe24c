package rillwright.solver.balance.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StepSearchTest {

  @Test
  void aFullStepThatStopsShortIsTaken() {
    assertEquals(1, StepSearch.lengthOf(t -> t - 2));
  }

  @Test
  void aFullStepThatOvershootsALittleIsTaken() {
    assertEquals(1, StepSearch.lengthOf(t -> 1.2 * t - 1));
  }

  @Test
  void aStepThatOvershootsALotEndsNearTheBottom() {
    assertEquals(0.1, StepSearch.lengthOf(t -> 10 * t - 1), 0.01);
  }

  @Test
  void aStepThatLeadsNowhereIsTakenWhole() {
    assertEquals(1, StepSearch.lengthOf(t -> 0));
    assertEquals(1, StepSearch.lengthOf(t -> t));
    assertEquals(1, StepSearch.lengthOf(t -> Double.NaN));
  }

  @ParameterizedTest(name = "wall of slope {0}")
  @ValueSource(doubles = {1e3, 1e6, 1e9, 1e12})
  void aStepThatMeetsAWallEndsAtItsFoot(double wall) {
    DoubleUnaryOperator slope = t -> -1 + 0.1 * t + wall * Math.max(0, t - 0.37);
    AtomicInteger tries = new AtomicInteger();
    double length =
        StepSearch.lengthOf(
            t -> {
              tries.incrementAndGet();
              return slope.applyAsDouble(t);
            });
    assertEquals(0.37, length, 1e-3);
    assertTrue(slope.applyAsDouble(length) <= 0.1, "left " + slope.applyAsDouble(length));
    assertTrue(tries.get() <= 64, tries + " tries");
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void neverGoesBackNorBeyondTheStepNorUphill(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double power = 0.2 + 3 * random.nextDouble();
      double factor = Math.exp(10 * random.nextGaussian());
      DoubleUnaryOperator slope = t -> factor * Math.pow(t, power) - 1;
      double length = StepSearch.lengthOf(slope);
      assertTrue(length > 0 && length <= 1, "length " + length);
      assertTrue(slope.applyAsDouble(length) <= 0.25, "seed " + seed + ", case " + i);
    }
  }

  /** Of such a slope there is no secant: infinity over infinity is no number. */
  @Test
  void slopesTooLargeForANumberAreHalved() {
    double length =
        StepSearch.lengthOf(
            t -> t == 0 ? -1 : t < 0.4 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY);
    assertEquals(0.4, length, 1e-3);
  }
}
