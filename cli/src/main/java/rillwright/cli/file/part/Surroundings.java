package rillwright.cli.file.part;

import java.util.Optional;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Point;

/**
 * What a part finds around it in its line.
 *
 * @param pipe the line's pipe
 * @param runBore bore of the nearest run, upstream first
 * @param runMaterial its material in the catalogue
 * @param start where the line begins; empty if that is faulty
 */
public record Surroundings(
    PipeSpec pipe, Optional<Bore> runBore, Optional<String> runMaterial, Optional<Point> start) {

  /** The bore that a part without its own stands in: the line's pipe, else the nearest run. */
  Optional<Bore> bore() {
    return pipe.bore().or(this::runBore);
  }

  /** The material of the pipe around. */
  Optional<String> material() {
    return pipe.material().or(this::runMaterial);
  }
}
