package rillwright.cli.file.field;

import rillwright.cli.file.quantity.Range;

/** Ranges that several sections share. */
public final class Limits {
  /** Inside diameter of pipes, fittings and nozzles, m. */
  public static final Range BORE =
      Range.between(1e-4, 100, "must be an inside diameter of 0.1 mm to 100 m");

  /** Discharge coefficient, dimensionless. */
  public static final Range DISCHARGE_COEFFICIENT =
      new Range(0, false, 2, "must be greater than 0 and not more than 2");

  /** Loss coefficient K, dimensionless. */
  public static final Range LOSS_COEFFICIENT = Range.NOT_NEGATIVE;

  private Limits() {}
}
