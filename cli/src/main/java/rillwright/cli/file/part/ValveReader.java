package rillwright.cli.file.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Limits;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.network.Part;
import rillwright.solver.network.Valve;

/** Reads valves. */
final class ValveReader implements PartReader {
  private final Catalogue catalogue;
  private final StandingBore bores;

  ValveReader(Catalogue catalogue, StandingBore bores) {
    this.catalogue = catalogue;
    this.bores = bores;
  }

  @Override
  public String kind() {
    return "valve";
  }

  @Override
  public List<String> fields() {
    List<String> fields = new ArrayList<>(List.of("type", "open", "k", "adjustable"));
    fields.addAll(PipeReader.BORE_FIELDS);
    return fields;
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    Bore bore = bores.require(fields, around);
    Optional<ValveTravel> travel = travel(fields);
    String label = travel.map(type -> type.word() + " valve").orElse(kind());
    return new Valve(label, setpoint(fields, travel), bore, fields.isYes("adjustable", false));
  }

  private Optional<ValveTravel> travel(Fields fields) {
    Optional<String> type = fields.findText("type");
    Optional<ValveTravel> travel = type.flatMap(catalogue::findValve);
    if (type.isPresent() && travel.isEmpty()) {
      fields.fault(
          "type",
          PlainText.quoted(type.get())
              + " is not known"
              + Choices.hint(type.get(), catalogue.valveTypes()));
    }
    return travel;
  }

  private static Valve.Setpoint setpoint(Fields fields, Optional<ValveTravel> travel) {
    if (fields.has("k")) {
      if (fields.has("open")) {
        fields.fault("k", "give either k or how far the valve is open, not both");
      }
      return new Valve.GivenLoss(fields.findOr("k", Measure.NUMBER, Limits.LOSS_COEFFICIENT, 0));
    }
    if (!fields.has("open")) {
      fields.fault("say how far it is open, for example \"open: 100 %\", or give its k");
    }
    if (!fields.has("type")) {
      fields.fault("its type is missing, for example \"type: ball\" (ball, butterfly, gate)");
    }
    double open = fields.findOr("open", Measure.SHARE, Range.SHARE, 1);
    return new Valve.Opening(travel.orElse(ValveTravel.BALL), open);
  }
}
