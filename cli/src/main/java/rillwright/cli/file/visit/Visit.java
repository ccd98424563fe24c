package rillwright.cli.file.visit;

import java.util.List;
import rillwright.solver.study.diagnosis.cause.Sign;
import rillwright.solver.study.diagnosis.reading.Reading;

/**
 * What was read and seen on site.
 *
 * @param placed readings, in the order of the file
 * @param signs what was seen and reported, in the order of the file
 */
public record Visit(List<PlacedReading> placed, List<Sign> signs) {
  public Visit {
    placed = List.copyOf(placed);
    signs = List.copyOf(signs);
  }

  /** The readings without their places. */
  public List<Reading> readings() {
    return placed.stream().map(PlacedReading::reading).toList();
  }
}
