package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.solver.steady.Sketch.check;
import static rillwright.solver.steady.Sketch.fitting;
import static rillwright.solver.steady.Sketch.pipe;
import static rillwright.solver.steady.Sketch.pump;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Networks far larger than a pond's take few steps more. */
class LargeNetworksTest {
  private static final int MOST_STEPS = 60;

  @ParameterizedTest(name = "{0} by {0} tees")
  @ValueSource(ints = {10, 16, 22})
  void gridOfPipesWithDrawsAndFalls(int size) {
    Random random = new Random(size);
    Sketch sketch = new Sketch().basin("pond", 0).basin("reservoir", 6);
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        boolean draws = random.nextInt(10) == 0;
        sketch.tee(at(row, column), draws ? 1e-5 : 0);
      }
    }
    int lines = 0;
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        String here = at(row, column);
        if (column + 1 < size) {
          sketch.line("line " + lines++, here, at(row, column + 1), pipe(2 + row, 0.05));
        }
        if (row + 1 < size) {
          sketch.line(
              "line " + lines++, here, at(row + 1, column), pipe(3, 0.04), fitting(0.9, 0.04));
        }
      }
    }
    sketch.line("supply", "pond", at(0, 0), pump(0, 9, 0.004, 7, 0.009, 0), check(0));
    sketch.line("top up", "reservoir", at(size - 1, 0), check(0.1), pipe(10, 0.04));
    for (int i = 0; i < size; i++) {
      sketch.fall("fall " + i, 1 + 0.3 * i);
      sketch.line("over " + i, at(i, size - 1), "fall " + i, pipe(4, 0.03));
    }
    assertBalanced(sketch, lines);
  }

  @ParameterizedTest(name = "{0} lines, seed {1}")
  @CsvSource({"200, 1", "500, 2", "1000, 3"})
  void treeOfPipesWithCheckValvesAndOutlets(int size, long seed) {
    Random random = new Random(seed);
    Sketch sketch = new Sketch().basin("pond", 0).tee("tee 0");
    sketch.line("supply", "pond", "tee 0", pump(0, 12, 0.05, 9, 0.1, 2));
    for (int i = 1; i < size; i++) {
      String name = "tee " + i;
      String before = "tee " + random.nextInt(i);
      double bore = 0.02 + 0.06 * random.nextDouble();
      if (random.nextBoolean()) {
        sketch.outlet(name, 8 * random.nextDouble());
        sketch.line("line " + i, before, name, check(0), pipe(5, bore));
      } else {
        sketch.tee(name);
        boolean back = random.nextInt(8) == 0;
        sketch.line("line " + i, back ? name : before, back ? before : name, pipe(3, bore));
      }
    }
    assertBalanced(sketch, size - 1);
  }

  @ParameterizedTest(name = "{0} falls in a row")
  @ValueSource(ints = {250})
  void longMainWithFallsAllAlongIt(int size) {
    Sketch sketch = new Sketch().basin("pond", 0).tee("tee 0");
    sketch.line("supply", "pond", "tee 0", pump(0, 40, 0.3, 30, 0.5, 0));
    for (int i = 0; i < size; i++) {
      sketch.tee("tee " + (i + 1)).fall("fall " + i, 1 + (i % 7));
      sketch.line("main " + i, "tee " + i, "tee " + (i + 1), pipe(2, 0.3));
      sketch.line("over " + i, "tee " + i, "fall " + i, pipe(2, 0.02), check(0));
    }
    assertBalanced(sketch, 2 * size);
  }

  private static void assertBalanced(Sketch sketch, int lines) {
    SteadyState state = sketch.solve();
    assertEquals(List.of(), BalanceAudit.faults(state));
    assertTrue(state.lines().size() >= lines);
    assertTrue(
        state.iterations() <= MOST_STEPS, state.lines().size() + " lines: " + state.iterations());
    assertTrue(state.lines().stream().filter(line -> line.flowM3PerS() != 0).count() > 10);
  }

  private static String at(int row, int column) {
    return "tee " + row + " " + column;
  }
}
