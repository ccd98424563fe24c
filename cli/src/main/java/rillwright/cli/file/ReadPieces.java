package rillwright.cli.file;

import java.util.Optional;
import rillwright.cli.file.field.Pieces;
import rillwright.cli.file.line.PlacedLine;
import rillwright.solver.network.Point;

/** What points and lines of a project read as, so that a changed one is read only where it is. */
record ReadPieces(Pieces<Optional<Point>> points, Pieces<Optional<PlacedLine>> lines) {
  /** Where nothing was read before. */
  ReadPieces() {
    this(new Pieces<>(), new Pieces<>());
  }

  /** For a project like it. */
  ReadPieces again() {
    return new ReadPieces(points.again(), lines.again());
  }
}
