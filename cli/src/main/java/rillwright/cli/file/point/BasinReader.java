package rillwright.cli.file.point;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
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
    if (fields.has("area") && fields.has("shape")) {
      fields.fault("shape", "give either an area or a shape, not both");
    }
    return new Basin(
        name,
        level,
        shape(fields, level),
        fields.find("overflow", Measure.SMALL_LENGTH, Range.ANY),
        fields.find("grade", Measure.SMALL_LENGTH, Range.ANY),
        fields.find("liner edge", Measure.SMALL_LENGTH, Range.ANY));
  }

  private static Optional<BasinShape> shape(Fields fields, double level) {
    OptionalDouble area = fields.find("area", Measure.AREA, Range.POSITIVE);
    if (area.isPresent()) {
      return Optional.of(new BasinShape(List.of(new BasinShape.Row(level, area.getAsDouble()))));
    }
    List<BasinShape.Row> rows = new ArrayList<>();
    for (Fields row : fields.listRows("shape", List.of("level", "area"))) {
      double rowLevel = row.require("level", Measure.SMALL_LENGTH, Range.ANY, "-36 in");
      double rowArea = row.require("area", Measure.AREA, Range.NOT_NEGATIVE, "90 ft2");
      int before = rows.size() - 1;
      if (row.areSound() && before >= 0 && rowLevel < rows.get(before).levelM()) {
        row.fault("level", "the rows go from the floor up, and this one is below the one before");
      }
      rows.add(new BasinShape.Row(rowLevel, rowArea));
    }
    if (fields.has("shape") && rows.isEmpty()) {
      fields.fault("shape", "a list of rows belongs here, each with a level and an area");
    }
    if (!fields.areSound() || rows.isEmpty()) {
      return Optional.empty();
    }
    if (level < rows.get(0).levelM()) {
      fields.fault("level", "the water stands below the lowest row of the basin's shape");
    }
    return Optional.of(new BasinShape(rows));
  }
}
