package rillwright.curves.chart.layout;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AxisRangeTest {
  private static List<String> labels(AxisRange axis) {
    return axis.ticks().mapToObj(axis::label).toList();
  }

  @Test
  void beginsAtZeroAndEndsOnARoundNumber() {
    AxisRange axis = AxisRange.covering(0, 6160, 8);
    assertArrayEquals(
        new double[] {0, 1000, 2000, 3000, 4000, 5000, 6000, 7000}, axis.ticks().toArray());
    assertEquals(List.of("0", "1,000", "2,000"), labels(axis).subList(0, 3));
  }

  @Test
  void showsAsManyDecimalsAsItsStepsNeed() {
    assertEquals(List.of("0.0", "0.2", "0.4", "0.6"), labels(AxisRange.covering(0, 0.55, 3)));
    assertEquals(List.of("\u22125", "0", "5", "10"), labels(AxisRange.covering(-2, 9, 4)));
  }

  @ParameterizedTest
  @CsvSource({"520, 100", "1200, 200", "350, 50", "3, 0.5", "690, 100", "1700, 250"})
  void aSecondAxisHasItsRoundNumbersOnTheSameLines(double greatest, double step) {
    AxisRange head = AxisRange.covering(0, 32, 7);
    AxisRange power = head.alongside(greatest);
    assertEquals(step, power.step(), 1e-12);
    assertEquals(head.ticks().count(), power.ticks().count());
    assertTrue(power.max() >= greatest);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void coversWhatItIsAskedToInAboutTheStepsAskedFor(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 2000; i++) {
      double greatest = Math.pow(10, random.nextDouble(-6, 8));
      double least = random.nextBoolean() ? 0 : -greatest * random.nextDouble();
      AxisRange axis = AxisRange.covering(least, greatest, 7);
      String what = "seed " + seed + ": " + least + " to " + greatest + " gives " + axis;
      assertTrue(axis.min() <= least * (1 - 1e-6) && axis.max() >= greatest * (1 - 1e-6), what);
      long steps = axis.ticks().count() - 1;
      assertTrue(steps >= 3 && steps <= 8, what);
    }
  }

  @Test
  void showsSomethingEvenWhereThereIsNothing() {
    assertTrue(AxisRange.covering(0, 0, 7).max() > 0);
  }

  @Test
  void anAxisOfFarAwayValuesNeedNotBeginAtZero() {
    AxisRange axis = AxisRange.spanning(1270, 2390, 6);
    assertEquals(1200, axis.min());
    assertEquals(2400, axis.max());
    assertEquals(List.of("1,200", "1,400"), labels(axis).subList(0, 2));
  }

  @Test
  void anAxisOfOneValueShowsALittleMore() {
    for (double value : new double[] {0, 1600, -3}) {
      AxisRange axis = AxisRange.spanning(value, value, 6);
      assertTrue(axis.min() <= value && value <= axis.max() && axis.min() < axis.max());
    }
  }
}
