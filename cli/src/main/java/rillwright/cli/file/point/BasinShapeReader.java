package rillwright.cli.file.point;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.TerracedPond;
import rillwright.solver.network.TerracedPond.Shelf;

/**
 * Reads how large a basin is: an area; rows of level and area; or length, width and depth with
 * shelves.
 */
final class BasinShapeReader {
  private final Fields basin;
  private final double levelM;

  /**
   * A reader of a basin's fields.
   *
   * @param levelM of its water
   */
  BasinShapeReader(Fields basin, double levelM) {
    this.basin = basin;
    this.levelM = levelM;
  }

  /** The shape; empty if the file does not say, or says it wrongly. */
  Optional<BasinShape> read() {
    if (basin.has("area") && basin.has("shape")) {
      basin.fault("shape", "give either an area or a shape, not both");
    }
    OptionalDouble area = basin.find("area", Measure.AREA, Range.POSITIVE);
    if (area.isPresent()) {
      return Optional.of(new BasinShape(List.of(new BasinShape.Row(levelM, area.getAsDouble()))));
    }
    Optional<Node> shape = basin.findNode("shape");
    if (shape.isPresent() && shape.get() instanceof Scalar) {
      nothingOfTheKind();
      return Optional.empty();
    }
    return shape.filter(MapNode.class::isInstance).isPresent()
        ? basin
            .findFields("shape", List.of("length", "width", "depth", "top", "shelves"))
            .flatMap(this::terraced)
        : rows();
  }

  private void nothingOfTheKind() {
    basin.fault(
        "shape",
        "expected rows of level and area, or for example {length: 12 ft, width: 9 ft, depth: 36 in,"
            + " shelves: [{depth: 18 in, width: 12 in}]}");
  }

  private Optional<BasinShape> rows() {
    List<BasinShape.Row> rows = new ArrayList<>();
    for (Fields row : basin.listRows("shape", List.of("level", "area"))) {
      double rowLevel = row.require("level", Measure.LENGTH, Range.ANY, "-36 in");
      double rowArea = row.require("area", Measure.AREA, Range.NOT_NEGATIVE, "90 ft2");
      int before = rows.size() - 1;
      if (row.areSound() && before >= 0 && rowLevel < rows.get(before).levelM()) {
        row.fault("level", "the rows go from the floor up, and this one is below the one before");
      }
      rows.add(new BasinShape.Row(rowLevel, rowArea));
    }
    if (basin.has("shape") && rows.isEmpty() && basin.areSound()) {
      nothingOfTheKind();
    }
    if (!basin.areSound() || rows.isEmpty()) {
      return Optional.empty();
    }
    if (levelM < rows.get(0).levelM()) {
      basin.fault("level", "the water stands below the lowest row of the basin's shape");
    }
    return Optional.of(new BasinShape(rows));
  }

  private Optional<BasinShape> terraced(Fields shape) {
    double length = shape.require("length", Measure.LENGTH, Range.POSITIVE, "12 ft");
    double width = shape.require("width", Measure.LENGTH, Range.POSITIVE, "9 ft");
    double depth = shape.require("depth", Measure.LENGTH, Range.POSITIVE, "36 in");
    double top = shape.findOr("top", Measure.LENGTH, Range.ANY, levelM);
    if (shape.areSound() && levelM < top - depth) {
      shape.fault("top", "the water stands below a floor that lies so far under this");
    }
    List<Shelf> shelves = new ArrayList<>();
    double above = 0;
    double ledges = 0;
    for (Fields row : shape.listRows("shelves", List.of("depth", "width"))) {
      double down =
          row.findOr("depth", Measure.LENGTH, Range.POSITIVE, above + TerracedPond.USUAL_STEP_M);
      double ledge = row.require("width", Measure.LENGTH, Range.POSITIVE, "12 in");
      ledges += ledge;
      if (row.areSound() && down <= above) {
        row.fault(
            "depth", "shelves go from the brim down, and this one is not below the one before");
      } else if (row.areSound() && shape.areSound() && down >= depth) {
        row.fault("a shelf lies above the floor, and this one does not; give the pond more depth");
      } else if (row.areSound() && shape.areSound() && 2 * ledges >= Math.min(length, width)) {
        row.fault("width", "the shelves are so wide, all round, that no floor is left");
      }
      shelves.add(new Shelf(down, ledge));
      above = down;
    }
    return shape.areSound() && basin.areSound()
        ? Optional.of(new TerracedPond(length, width, depth, shelves).shape(top))
        : Optional.empty();
  }
}
