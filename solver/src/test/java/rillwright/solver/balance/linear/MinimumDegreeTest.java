package rillwright.solver.balance.linear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MinimumDegreeTest {

  @Test
  void everyGraphOfFivePointsIsEliminatedWithTheLeastFillThereIs() {
    int[][] orders = permutations(5);
    for (int graph = 0; graph < 1 << 10; graph++) {
      boolean[][] joined = graphOf(graph, 5);
      int best = Arrays.stream(orders).mapToInt(order -> fill(joined, order)).min().orElseThrow();
      int[] order = MinimumDegree.order(5, edges(joined));
      assertEquals(best, fill(joined, order), "graph " + graph);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void eachPointHasTheFewestNeighboursLeftWhenItGoes(long seed) {
    Random random = new Random(seed);
    int size = 30;
    boolean[][] joined = new boolean[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < i; j++) {
        joined[i][j] = random.nextInt(8) == 0;
        joined[j][i] = joined[i][j];
      }
    }
    int[] order = MinimumDegree.order(size, edges(joined));
    assertTrue(isPermutation(order));
    boolean[] gone = new boolean[size];
    for (int node : order) {
      int fewest =
          IntStream.range(0, size)
              .filter(i -> !gone[i])
              .map(i -> degree(joined, gone, i))
              .min()
              .orElseThrow();
      assertEquals(fewest, degree(joined, gone, node));
      eliminate(joined, gone, node);
    }
  }

  @Test
  void treesAreEliminatedWithoutFill() {
    Random random = new Random(4);
    int size = 60;
    boolean[][] joined = new boolean[size][size];
    for (int i = 1; i < size; i++) {
      int before = random.nextInt(i);
      joined[i][before] = true;
      joined[before][i] = true;
    }
    assertEquals(0, fill(joined, MinimumDegree.order(size, edges(joined))));
  }

  private static boolean isPermutation(int[] order) {
    return Arrays.equals(
        IntStream.range(0, order.length).toArray(), Arrays.stream(order).sorted().toArray());
  }

  /** Number of entries that elimination in an order adds. */
  private static int fill(boolean[][] graph, int[] order) {
    boolean[][] joined = Arrays.stream(graph).map(boolean[]::clone).toArray(boolean[][]::new);
    boolean[] gone = new boolean[order.length];
    int fill = 0;
    for (int node : order) {
      fill += eliminate(joined, gone, node);
    }
    return fill;
  }

  private static int eliminate(boolean[][] joined, boolean[] gone, int node) {
    gone[node] = true;
    int added = 0;
    for (int i = 0; i < gone.length; i++) {
      for (int j = 0; j < i; j++) {
        boolean both = joined[node][i] && joined[node][j] && !gone[i] && !gone[j];
        if (both && !joined[i][j]) {
          joined[i][j] = true;
          joined[j][i] = true;
          added++;
        }
      }
    }
    return added;
  }

  private static int degree(boolean[][] joined, boolean[] gone, int node) {
    return (int) IntStream.range(0, gone.length).filter(i -> joined[node][i] && !gone[i]).count();
  }

  private static boolean[][] graphOf(int bits, int size) {
    boolean[][] joined = new boolean[size][size];
    int left = bits;
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < i; j++) {
        joined[i][j] = (left & 1) == 1;
        joined[j][i] = joined[i][j];
        left >>= 1;
      }
    }
    return joined;
  }

  private static int[] edges(boolean[][] joined) {
    return IntStream.range(0, joined.length)
        .boxed()
        .flatMapToInt(
            i -> IntStream.range(0, i).filter(j -> joined[i][j]).flatMap(j -> IntStream.of(i, j)))
        .toArray();
  }

  private static int[][] permutations(int size) {
    if (size == 1) {
      return new int[][] {{0}};
    }
    return Arrays.stream(permutations(size - 1))
        .flatMap(
            shorter ->
                IntStream.range(0, size).mapToObj(place -> inserted(shorter, place, size - 1)))
        .toArray(int[][]::new);
  }

  private static int[] inserted(int[] order, int place, int node) {
    return IntStream.range(0, order.length + 1)
        .map(i -> i < place ? order[i] : i == place ? node : order[i - 1])
        .toArray();
  }
}
