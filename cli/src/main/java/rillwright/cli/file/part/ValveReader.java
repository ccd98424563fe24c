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
import rillwright.solver.law.minor.ValveLoss;
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
  public List<String> types() {
    return catalogue.valveTypes();
  }

  @Override
  public String example(String type) {
    return kind() + ": {type: " + type + ", open: 100 %}";
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    Bore bore = bores.require(fields, around);
    Optional<ValveLoss> loss = loss(fields, bore);
    String label = loss.map(type -> type.travel().word() + " valve").orElse(kind());
    return new Valve(label, setpoint(fields, loss), bore, fields.isYes("adjustable", false));
  }

  private Optional<ValveLoss> loss(Fields fields, Bore bore) {
    Optional<String> type = fields.findText("type");
    Optional<ValveLoss> loss = type.flatMap(name -> catalogue.findValve(name, bore));
    if (type.isPresent() && loss.isEmpty()) {
      fields.fault(
          "type",
          PlainText.quoted(type.get()) + " is not known" + Choices.hint(type.get(), types()));
    }
    return loss;
  }

  private static Valve.Setpoint setpoint(Fields fields, Optional<ValveLoss> loss) {
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
    return new Valve.Opening(loss.orElseGet(ValveTravel.BALL::published), open);
  }
}
