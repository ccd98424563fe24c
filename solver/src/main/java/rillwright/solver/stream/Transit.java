package rillwright.solver.stream;

/**
 * Water that is on its way while the pump runs and comes back to the pond when it stops, m³.
 *
 * @param streamsM3 in the reaches
 * @param gravelM3 in gravel, what of it drains
 * @param poolsM3 above the crests of pools
 * @param boxesM3 above the crests of the falls' boxes
 * @param filtersM3 in filters that drain
 * @param pipesM3 in pipes that drain
 */
public record Transit(
    double streamsM3,
    double gravelM3,
    double poolsM3,
    double boxesM3,
    double filtersM3,
    double pipesM3) {
  /** None. */
  public static final Transit NONE = new Transit(0, 0, 0, 0, 0, 0);

  /** All of it, m³. */
  public double totalM3() {
    return streamsM3 + gravelM3 + poolsM3 + boxesM3 + filtersM3 + pipesM3;
  }

  /** Both together. */
  public Transit plus(Transit other) {
    return new Transit(
        streamsM3 + other.streamsM3,
        gravelM3 + other.gravelM3,
        poolsM3 + other.poolsM3,
        boxesM3 + other.boxesM3,
        filtersM3 + other.filtersM3,
        pipesM3 + other.pipesM3);
  }
}
