package rillwright.cli.file.point;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.QuantityReader;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** Reads falls. */
final class FallReader implements PointReader {
  private static final Measure TARGET = Measure.either(Measure.FLOW, Measure.FLOW_PER_WIDTH);

  private final CrestReader crests;
  private final List<String> basins;

  /**
   * A reader.
   *
   * @param basins names of the file's basins
   */
  FallReader(Catalogue catalogue, List<String> basins) {
    this.crests = new CrestReader(catalogue);
    this.basins = basins;
  }

  @Override
  public String kind() {
    return "fall";
  }

  @Override
  public List<String> fields() {
    return List.of(
        "crest", "width", "lip", "weir", "target", "returns to", "box area", "box depth");
  }

  @Override
  public Point read(PointName name, Fields fields) {
    double level = fields.require("crest", Measure.LENGTH, Range.ANY, "4 ft");
    Crest crest = crests.read(fields);
    if (fields.has("width") && crest.weir().crestWidthM().isEmpty()) {
      fields
          .ledger()
          .note(
              fields.what()
                  + ": a notch runs as wide as its angle makes it; its width counts only for a flow"
                  + " per width");
    }
    return new Fall(
        name,
        level,
        crest.weir(),
        crest.depthBand(),
        targetM3PerS(fields, crest),
        returnsTo(fields));
  }

  private static OptionalDouble targetM3PerS(Fields fields, Crest crest) {
    Optional<Node> target = fields.findNode("target");
    if (target.isPresent() && target.get() instanceof MapNode) {
      return fields
          .findFields("target", List.of("crest head"))
          .map(
              asked ->
                  asked.require("crest head", Measure.SMALL_LENGTH, Range.NOT_NEGATIVE, "0.6 in"))
          .map(headM -> OptionalDouble.of(crest.weir().flowAt(headM)))
          .orElse(OptionalDouble.empty());
    }
    if (target.isPresent()
        && target.get() instanceof Scalar text
        && QuantityReader.fits(text.text(), Measure.FLOW_PER_WIDTH)) {
      if (crest.widthM() == 0) {
        fields.fault("target", "a flow per width needs the width of the fall");
      }
      double perWidth = fields.findOr("target", Measure.FLOW_PER_WIDTH, Range.NOT_NEGATIVE, 0);
      return OptionalDouble.of(perWidth * crest.widthM());
    }
    if (target.isPresent()
        && target.get() instanceof Scalar text
        && QuantityReader.fits(text.text(), Measure.LENGTH)) {
      fields.fault(
          "target",
          "a depth over the crest is written \"target: {crest head: "
              + text.text().strip()
              + "}\"");
      return OptionalDouble.empty();
    }
    return fields.find("target", TARGET, Range.NOT_NEGATIVE);
  }

  private Optional<PointName> returnsTo(Fields fields) {
    Optional<String> basin = fields.findText("returns to");
    if (basin.isPresent() && !basins.contains(basin.get())) {
      fields.unknown(
          "returns to", "there is no basin " + PlainText.quoted(basin.get()), basin.get(), basins);
    }
    return basin.map(PointName::new);
  }
}
