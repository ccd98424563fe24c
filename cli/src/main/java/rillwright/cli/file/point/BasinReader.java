package rillwright.cli.file.point;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** Reads basins. */
final class BasinReader implements PointReader {
  private static final Range VOIDS = Range.between(0.01, 1, "must be 1 % to 100 %");

  @Override
  public String kind() {
    return "basin";
  }

  @Override
  public List<String> fields() {
    return List.of(
        "level",
        "area",
        "shape",
        "voids",
        "overflow",
        "grade",
        "liner edge",
        "least level",
        "evaporates");
  }

  @Override
  public Point read(PointName name, Fields fields) {
    double level = fields.require("level", Measure.SMALL_LENGTH, Range.ANY, "0 ft");
    double voids = fields.findOr("voids", Measure.SHARE, VOIDS, 1);
    if (fields.has("voids") && !fields.has("area") && !fields.has("shape")) {
      fields.fault(
          "voids", "voids are a share of what \"area\" or \"shape\" holds; give one of them");
    }
    OptionalDouble leastLevel = fields.find("least level", Measure.SMALL_LENGTH, Range.ANY);
    if (fields.areSound() && leastLevel.orElse(level) > level) {
      fields.fault(
          "least level", "the water at rest stands below this level; it must be at it or above");
    }
    OptionalDouble evaporates = fields.find("evaporates", Measure.AREA, Range.NOT_NEGATIVE);
    if (evaporates.isPresent() && fields.areSound()) {
      String surface = fields.findText("evaporates").orElse("");
      fields.ledger().note(fields.nameOf("evaporates") + ": " + surface + " of its water is open");
    }
    return new Basin(
        name,
        level,
        new BasinShapeReader(fields, level)
            .read()
            .map(shape -> voids == 1 ? shape : shape.times(voids)),
        fields.find("overflow", Measure.SMALL_LENGTH, Range.ANY),
        fields.find("grade", Measure.SMALL_LENGTH, Range.ANY),
        fields.find("liner edge", Measure.SMALL_LENGTH, Range.ANY),
        leastLevel,
        evaporates,
        voids < 1);
  }
}
