package rillwright.solver.study.diagnosis.cause;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.study.diagnosis.job.Alteration;

/** What a cause at a place makes of a job. */
@FunctionalInterface
public interface Effect {
  /**
   * Makes it so.
   *
   * @param size how large it is; of several choices which, from 0; of no account to a cause without
   *     either
   */
  void apply(double size, Alteration job);

  /** Whether it is anything at all at a size. */
  default boolean isThereAt(double size) {
    return true;
  }

  /** Rates at which its pond may fall besides, one of them; usually none. */
  default List<Besides> pondFalls() {
    return List.of();
  }

  /**
   * A rate at which a pond falls besides.
   *
   * @param mPerS how fast, m/s
   * @param weight beside the others
   */
  record Besides(double mPerS, double weight) {
    private static final int FASTEST_MM_PER_H = 30;

    /** Up to 30 mm/h, a smaller one likelier; weights sum to 1. Common practice, no source. */
    public static final List<Besides> USUAL = usual();

    private static List<Besides> usual() {
      double sum = 0;
      for (int mm = 1; mm <= FASTEST_MM_PER_H; mm++) {
        sum += 1.0 / mm;
      }
      List<Besides> rates = new ArrayList<>();
      for (int mm = 1; mm <= FASTEST_MM_PER_H; mm++) {
        rates.add(new Besides(mm * 1e-3 / 3600, 1.0 / mm / sum));
      }
      return List.copyOf(rates);
    }
  }

  /** What it may be where it has no size but is one of several, each as likely; usually nothing. */
  default List<String> choices() {
    return List.of();
  }
}
