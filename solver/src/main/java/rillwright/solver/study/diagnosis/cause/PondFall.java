package rillwright.solver.study.diagnosis.cause;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Meter;

/**
 * A rate at which a pond may fall besides what else lowers it: its own leak.
 *
 * @param mPerS how fast, m/s
 * @param weight beside the others
 */
public record PondFall(double mPerS, double weight) {
  /** Common practice, no source. */
  private static final int FASTEST_MM_PER_H = 30;

  /** The fastest of them, m/s. */
  public static final double FASTEST_M_PER_S = fromMmPerH(FASTEST_MM_PER_H);

  /** A rate for each millimetre an hour, a smaller one likelier; weights sum to 1. */
  public static final List<PondFall> USUAL = usual();

  private static List<PondFall> usual() {
    double sum = 0;
    for (int mm = 1; mm <= FASTEST_MM_PER_H; mm++) {
      sum += 1.0 / mm;
    }
    List<PondFall> rates = new ArrayList<>();
    for (int mm = 1; mm <= FASTEST_MM_PER_H; mm++) {
      rates.add(new PondFall(fromMmPerH(mm), 1.0 / mm / sum));
    }
    return List.copyOf(rates);
  }

  private static double fromMmPerH(int mmPerH) {
    return mmPerH * 1e-3 / 3600;
  }

  /** Whether it adds to what is read of something. */
  public static boolean isReadIn(Measurand what) {
    return what instanceof Meter meter && meter.kind() == Meter.Kind.FALLS;
  }
}
