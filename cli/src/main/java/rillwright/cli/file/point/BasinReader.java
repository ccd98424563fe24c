package rillwright.cli.file.point;

import java.util.List;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** Reads basins. */
final class BasinReader implements PointReader {

  @Override
  public String kind() {
    return "basin";
  }

  @Override
  public List<String> fields() {
    return List.of("level", "area", "shape", "overflow", "grade", "liner edge");
  }

  @Override
  public Point read(PointName name, Fields fields) {
    double level = fields.require("level", Measure.SMALL_LENGTH, Range.ANY, "0 ft");
    return new Basin(
        name,
        level,
        new BasinShapeReader(fields, level).read(),
        fields.find("overflow", Measure.SMALL_LENGTH, Range.ANY),
        fields.find("grade", Measure.SMALL_LENGTH, Range.ANY),
        fields.find("liner edge", Measure.SMALL_LENGTH, Range.ANY));
  }
}
