package rillwright.cli.file.point;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** Reads chambers. */
final class ChamberReader implements PointReader {

  @Override
  public String kind() {
    return "chamber";
  }

  @Override
  public List<String> fields() {
    return List.of("floor", "intake", "top", "area");
  }

  @Override
  public Point read(PointName name, Fields fields) {
    double floor = fields.require("floor", Measure.SMALL_LENGTH, Range.ANY, "-36 in");
    double intake = fields.findOr("intake", Measure.SMALL_LENGTH, Range.ANY, floor);
    OptionalDouble top = fields.find("top", Measure.SMALL_LENGTH, Range.ANY);
    OptionalDouble area = fields.find("area", Measure.AREA, Range.POSITIVE);
    if (fields.areSound()) {
      if (intake < floor) {
        fields.fault("intake", "the intake is below the floor; it must be at the floor or above");
      }
      if (top.isPresent() && top.getAsDouble() <= floor) {
        fields.fault("top", "the top must be above the floor");
      } else if (top.isPresent() && intake > top.getAsDouble()) {
        fields.fault("intake", "the intake is above the top; it must be below");
      }
    }
    return fields.areSound()
        ? new Chamber(name, floor, intake, top, area)
        : new Chamber(name, 0, 0, OptionalDouble.empty(), OptionalDouble.empty());
  }
}
