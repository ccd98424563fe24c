package rillwright.cli.file.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Part;

/** Reads gauges. */
final class GaugeReader implements PartReader {
  private final StandingBore bores;

  GaugeReader(StandingBore bores) {
    this.bores = bores;
  }

  @Override
  public String kind() {
    return "gauge";
  }

  @Override
  public List<String> fields() {
    List<String> fields = new ArrayList<>(List.of("name", "elevation"));
    fields.addAll(PipeReader.BORE_FIELDS);
    return fields;
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    Optional<String> name = fields.requireText("name", "G1");
    double elevation = fields.require("elevation", Measure.LENGTH, Range.ANY, "0 ft");
    return new Gauge(name.orElse(""), elevation, bores.find(fields, around));
  }
}
