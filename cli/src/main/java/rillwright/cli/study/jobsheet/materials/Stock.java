package rillwright.cli.study.jobsheet.materials;

import rillwright.cli.catalogue.PipeSize;
import rillwright.curves.unit.Unit;

/**
 * Lengths of pipe as they are sold, and how many of them a net length takes: 5 % is added for cuts,
 * and no length is broken. Lengths and allowance are common practice, no source.
 *
 * @param lengthM of one, m
 * @param count how many to buy
 * @param coiled whether one is a coil
 */
public record Stock(double lengthM, int count, boolean coiled) {
  /** What is added to a net length for cuts. */
  public static final double CUTTING_ALLOWANCE = 0.05;

  private static final double LENGTH_FT = 20;
  private static final double COIL_FT = 50;
  private static final double LENGTH_M = 5;
  private static final double COIL_M = 25;

  /** A hair more than whole lengths is not another length. */
  private static final double HAIR = 1e-9;

  /** What a net length of a pipe takes. */
  static Stock of(PipeSize pipe, double netM) {
    boolean coiled = pipe.wall().coiled();
    double one =
        pipe.isMetric()
            ? (coiled ? COIL_M : LENGTH_M)
            : Unit.FOOT.toSi(coiled ? COIL_FT : LENGTH_FT);
    double lengths = netM * (1 + CUTTING_ALLOWANCE) / one;
    return new Stock(one, (int) Math.ceil(lengths - HAIR), coiled);
  }

  /** All of it, m. */
  public double totalM() {
    return count * lengthM;
  }
}
