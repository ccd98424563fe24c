package rillwright.cli.file.part;

import java.util.List;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Part;

/** Reads high points. */
final class HighPointReader implements PartReader {

  @Override
  public String kind() {
    return "high point";
  }

  @Override
  public List<String> fields() {
    return List.of("elevation");
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    double elevation = fields.require("elevation", Measure.LENGTH, Range.ANY, "8 ft");
    return new HighPoint(elevation, around.bore());
  }
}
