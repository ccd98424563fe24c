package rillwright.solver.balance;

import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;

/**
 * Goes over many links in spans of one length, which all processors share. What the spans give is
 * put together in their order, so that the result has the same digits on any number of processors.
 */
final class Spans {
  private static final int LENGTH = 4096;

  private Spans() {}

  /** What is done with the links of a span. */
  @FunctionalInterface
  interface Work {
    /** Goes from one link up to another, which is not part of it. */
    double over(int from, int to);
  }

  /** What all spans of so many links give together, 0 to begin with. */
  static double fold(int links, Work work, DoubleBinaryOperator both) {
    if (links <= LENGTH) {
      return work.over(0, links);
    }
    double[] each =
        IntStream.rangeClosed(0, (links - 1) / LENGTH)
            .parallel()
            .mapToDouble(i -> work.over(i * LENGTH, Math.min(links, (i + 1) * LENGTH)))
            .toArray();
    double all = 0;
    for (double one : each) {
      all = both.applyAsDouble(all, one);
    }
    return all;
  }
}
