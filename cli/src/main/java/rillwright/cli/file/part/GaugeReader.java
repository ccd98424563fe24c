package rillwright.cli.file.part;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Part;

/** Reads gauges; their names are unique in the file. */
final class GaugeReader implements PartReader {
  private final StandingBore bores;
  private final Map<String, Place> seen = new HashMap<>();

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
    if (name.isPresent()) {
      Place before = seen.putIfAbsent(name.get(), fields.place());
      if (before != null) {
        fields.fault(
            "name",
            "the gauge in line "
                + before.line()
                + " is called "
                + PlainText.quoted(name.get())
                + " too; give each gauge its own name");
      }
    }
    return new Gauge(name.orElse(""), elevation, bores.find(fields, around));
  }
}
