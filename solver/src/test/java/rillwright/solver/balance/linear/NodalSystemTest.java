package rillwright.solver.balance.linear;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NodalSystemTest {

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void agreesWithADenseSolution(long seed) {
    Random random = new Random(seed);
    int size = 1 + random.nextInt(40);
    int edges = random.nextInt(3 * size);
    int[] from = random.ints(edges, 0, size).toArray();
    int[] to = random.ints(edges, 0, size).toArray();
    NodalSystem system = new NodalSystem(new EdgePattern(size, from, to));
    for (int round = 0; round < 3; round++) {
      RealMatrix dense = new Array2DRowRealMatrix(size, size);
      RealVector right = new ArrayRealVector(size);
      system.clear();
      for (int i = 0; i < size; i++) {
        add(system, dense, i, 0.01 + random.nextDouble());
        double value = random.nextGaussian();
        right.addToEntry(i, value);
        system.addToRightHandSide(i, value);
      }
      for (int e = 0; e < edges; e++) {
        couple(system, dense, from[e], to[e], e, Math.exp(6 * random.nextGaussian()));
      }
      double[] heads = new double[size];
      assertTrue(system.solve(heads));
      RealVector expected = new LUDecomposition(dense).getSolver().solve(right);
      assertEquals(
          0,
          expected.subtract(new ArrayRealVector(heads)).getNorm(),
          1e-9 * Math.max(1, expected.getNorm()),
          "seed " + seed + ", round " + round);
    }
  }

  @Test
  void systemsOfOnePatternDoNotDisturbEachOther() {
    EdgePattern edges = new EdgePattern(2, new int[] {0}, new int[] {1});
    NodalSystem one = new NodalSystem(edges);
    NodalSystem other = new NodalSystem(edges);
    boolean[] free = new boolean[2];
    one.couple(0, 0, 1, 1, free);
    other.couple(0, 0, 1, 3, free);
    for (NodalSystem system : new NodalSystem[] {one, other}) {
      system.addToDiagonal(0, 1);
      system.addToRightHandSide(0, 1);
      double[] heads = new double[2];
      assertTrue(system.solve(heads));
      assertArrayEquals(new double[] {1, 1}, heads, 1e-12);
    }
  }

  private static void add(NodalSystem system, RealMatrix dense, int node, double value) {
    system.addToDiagonal(node, value);
    dense.addToEntry(node, node, value);
  }

  private static void couple(
      NodalSystem system, RealMatrix dense, int i, int j, int edge, double conductance) {
    if (i == j) {
      return;
    }
    system.couple(edge, i, j, conductance, new boolean[Math.max(i, j) + 1]);
    dense.addToEntry(i, i, conductance);
    dense.addToEntry(j, j, conductance);
    dense.addToEntry(i, j, -conductance);
    dense.addToEntry(j, i, -conductance);
  }

  @Test
  void saysSoWhenTheMatrixIsNotPositiveDefinite() {
    NodalSystem system = new NodalSystem(new EdgePattern(2, new int[] {0}, new int[] {1}));
    system.addToDiagonal(0, 1);
    system.addToDiagonal(1, -1);
    assertFalse(system.solve(new double[2]));
  }

  @Test
  void aSystemOfNothingIsSolved() {
    assertTrue(new NodalSystem(new EdgePattern(0, new int[0], new int[0])).solve(new double[0]));
  }
}
