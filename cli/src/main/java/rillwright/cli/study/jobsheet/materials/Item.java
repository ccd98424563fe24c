package rillwright.cli.study.jobsheet.materials;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something to buy.
 *
 * @param what it is
 * @param lengthM net length of a pipe, m; empty of what is counted
 * @param stock the lengths of it to buy; empty of what is counted
 * @param count pieces to buy; of pipe the stock lengths
 * @param price of all of them, in the currency of the project; empty where the file has none
 */
public record Item(
    Thing what, OptionalDouble lengthM, Optional<Stock> stock, int count, OptionalDouble price) {

  /**
   * What is the same on a list.
   *
   * @param kind of it
   * @param name as the trade calls it
   * @param material of the pipe, or of the pipe that it stands in; empty where it has none
   * @param size of that pipe as the trade says it; of a change of bore both; empty where the
   *     catalogue knows no such pipe
   * @param boreM bore of a pipe that the catalogue does not know, m
   * @param lossCoefficient K of a piece that the file gives by nothing else
   */
  public record Thing(
      Kind kind,
      String name,
      String material,
      String size,
      OptionalDouble boreM,
      OptionalDouble lossCoefficient) {}

  /** What kinds of things a list is sorted by. */
  public enum Kind {
    PIPE,
    JUNCTION,
    FITTING,
    VALVE,
    CHECK_VALVE,
    BULKHEAD_FITTING,
    UNION,
    GAUGE_TAP,
    SKIMMER,
    FILTER,
    OTHER_LOSS,
    PUMP
  }
}
