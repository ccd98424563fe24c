package rillwright.solver.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpansTest {
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 4096, 4097, 50_000})
  void goOverEachLinkOnce(int links) {
    int[] times = new int[links];
    Spans.fold(
        links,
        (from, to) -> {
          IntStream.range(from, to).forEach(link -> times[link]++);
          return 0;
        },
        Double::sum);
    assertEquals(links, IntStream.of(times).filter(count -> count == 1).count());
  }

  @Test
  void giveTheSameDigitsOnAnyNumberOfProcessors() throws Exception {
    double[] values = new Random(1).doubles(100_000, -1, 1).toArray();
    double alone = sumOn(1, values);
    for (int processors = 2; processors <= 8; processors++) {
      assertEquals(alone, sumOn(processors, values), 0);
    }
    assertEquals(IntStream.range(0, values.length).mapToDouble(i -> values[i]).sum(), alone, 1e-9);
  }

  private static double sumOn(int processors, double[] values) throws Exception {
    ForkJoinPool pool = new ForkJoinPool(processors);
    try {
      return pool.submit(
              () -> Spans.fold(values.length, (from, to) -> sum(values, from, to), Double::sum))
          .get();
    } finally {
      pool.shutdown();
    }
  }

  private static double sum(double[] values, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += values[i];
    }
    return sum;
  }
}
