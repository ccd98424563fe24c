package rillwright.cli.file.point;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Limits;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Nozzle;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** Reads outlets. */
final class OutletReader implements PointReader {

  @Override
  public String kind() {
    return "outlet";
  }

  @Override
  public List<String> fields() {
    return List.of("elevation", "level", "nozzle", "target");
  }

  @Override
  public Point read(PointName name, Fields fields) {
    OptionalDouble level = fields.find("level", Measure.LENGTH, Range.ANY);
    double elevation =
        level.isPresent()
            ? fields.findOr("elevation", Measure.LENGTH, Range.ANY, level.getAsDouble())
            : fields.require("elevation", Measure.LENGTH, Range.ANY, "4 ft");
    if (fields.areSound() && level.orElse(elevation) < elevation) {
      fields
          .ledger()
          .note(
              fields.what()
                  + " ends above the level of the water it is said to end in; it is taken to end"
                  + " under that water");
    }
    return new Outlet(
        name,
        elevation,
        level,
        fields.findFields("nozzle", List.of("diameter", "discharge coefficient")).map(this::nozzle),
        fields.find("target", Measure.FLOW, Range.NOT_NEGATIVE));
  }

  private Nozzle nozzle(Fields nozzle) {
    double diameter = nozzle.require("diameter", Measure.SMALL_LENGTH, Limits.BORE, "10 mm");
    double coefficient =
        nozzle.require(
            "discharge coefficient", Measure.NUMBER, Limits.DISCHARGE_COEFFICIENT, "0.97");
    return new Nozzle(new Bore(diameter), coefficient);
  }
}
