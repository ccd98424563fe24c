package rillwright.cli.file.point;

import java.util.List;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Tee;

/** Reads tees. */
final class TeeReader implements PointReader {

  @Override
  public String kind() {
    return "tee";
  }

  @Override
  public List<String> fields() {
    return List.of("elevation", "draw");
  }

  @Override
  public Point read(PointName name, Fields fields) {
    return new Tee(
        name,
        fields.find("elevation", Measure.LENGTH, Range.ANY),
        fields.findOr("draw", Measure.FLOW, Range.ANY, 0));
  }
}
