package rillwright.cli.file.part;

import java.util.List;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Limits;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.network.Part;
import rillwright.solver.network.Skimmer;

/** Reads skimmers. */
final class SkimmerReader implements PartReader {

  @Override
  public String kind() {
    return "skimmer";
  }

  @Override
  public List<String> fields() {
    return List.of("width", "height", "sill", "door", "clogged", "discharge coefficient");
  }

  @Override
  public boolean takesWaterIn() {
    return true;
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    if (around.start().filter(point -> !point.kind().equals("basin")).isPresent()) {
      fields.fault("a skimmer's line must begin at a basin");
    }
    double usual = fields.isYes("door", true) ? Skimmer.WITH_DOOR : Skimmer.WITHOUT_DOOR;
    return new Skimmer(
        fields.require("width", Measure.SMALL_LENGTH, Range.POSITIVE, "12 in"),
        fields.find("height", Measure.SMALL_LENGTH, Range.POSITIVE),
        fields.require("sill", Measure.SMALL_LENGTH, Range.ANY, "-5 in"),
        fields.findOr("discharge coefficient", Measure.NUMBER, Limits.DISCHARGE_COEFFICIENT, usual),
        fields.findOr("clogged", Measure.SHARE, Range.SHARE, 0));
  }
}
