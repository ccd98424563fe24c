package rillwright.cli.file.line;

import java.util.List;
import rillwright.cli.file.fault.Place;
import rillwright.solver.network.Line;

/**
 * A line and where it is written.
 *
 * @param place of its name
 * @param partPlaces of its parts, in order; copied
 */
public record PlacedLine(Line line, Place place, List<Place> partPlaces) {
  public PlacedLine {
    partPlaces = List.copyOf(partPlaces);
  }
}
