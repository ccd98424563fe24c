package rillwright.cli.file.part;

import java.util.List;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.HighPoint.Air;
import rillwright.solver.network.Part;

/** Reads high points. */
final class HighPointReader implements PartReader {

  private static final Range FALL =
      new Range(
          0,
          false,
          HighPoint.UPRIGHT_DEGREES,
          "must be an angle of more than 0 and up to 90 degrees below the horizontal");

  @Override
  public String kind() {
    return "high point";
  }

  @Override
  public List<String> fields() {
    return List.of("elevation", "primed", "vent", "falls");
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    double elevation = fields.require("elevation", Measure.LENGTH, Range.ANY, "8 ft");
    boolean primed = fields.isYes("primed", false);
    boolean vent = fields.isYes("vent", false);
    if (primed && vent) {
      fields.fault("vent", "a vent lets in the air that priming takes out; keep one of the two");
    }
    Air air = primed ? Air.PRIMED : vent ? Air.VENTED : Air.SWEPT;
    double falls = fields.findOr("falls", Measure.ANGLE, FALL, HighPoint.UPRIGHT_DEGREES);
    return new HighPoint(elevation, around.bore(), air, falls);
  }
}
