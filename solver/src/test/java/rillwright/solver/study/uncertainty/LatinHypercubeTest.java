package rillwright.solver.study.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LatinHypercubeTest {

  @ParameterizedTest(name = "{0} samples")
  @ValueSource(ints = {2, 7, 100, 10_000})
  void eachPartOfTheChancesOfEachQuantityIsTakenOnce(int samples) {
    LatinHypercube cube = LatinHypercube.draw(5, samples, 3);
    for (int quantity = 0; quantity < 5; quantity++) {
      Set<Integer> parts = new HashSet<>();
      for (int sample = 0; sample < samples; sample++) {
        double chance = cube.chance(quantity, sample);
        assertTrue(chance > 0 && chance < 1);
        parts.add((int) Math.floor(chance * samples));
      }
      assertEquals(samples, parts.size(), "quantity " + quantity);
    }
  }

  @Test
  void theSameSeedDrawsTheSame() {
    LatinHypercube one = LatinHypercube.draw(2, 50, 7);
    LatinHypercube again = LatinHypercube.draw(2, 50, 7);
    LatinHypercube other = LatinHypercube.draw(2, 50, 8);
    int alike = 0;
    for (int sample = 0; sample < 50; sample++) {
      assertEquals(one.chance(1, sample), again.chance(1, sample));
      alike += one.chance(1, sample) == other.chance(1, sample) ? 1 : 0;
    }
    assertNotEquals(50, alike);
  }

  /** Two quantities drawn by lot hang together by about 1/√n at most, here by three times that. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void quantitiesAreDrawnApart(long seed) {
    int samples = 10_000;
    LatinHypercube cube = LatinHypercube.draw(4, samples, seed);
    for (int one = 0; one < 4; one++) {
      for (int other = 0; other < one; other++) {
        double sum = 0;
        for (int sample = 0; sample < samples; sample++) {
          sum += (cube.chance(one, sample) - 0.5) * (cube.chance(other, sample) - 0.5);
        }
        double correlation = 12 * sum / samples;
        assertEquals(0, correlation, 3 / Math.sqrt(samples) * 1.2, one + " and " + other);
      }
    }
  }
}
