package rillwright.cli.file.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.CheckValveRow;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Limits;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Quantity;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.Bore;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Part;

/** Reads check valves. */
final class CheckValveReader implements PartReader {
  private final Catalogue catalogue;
  private final StandingBore bores;
  private final Measure head;

  CheckValveReader(Catalogue catalogue, StandingBore bores, Measure head) {
    this.catalogue = catalogue;
    this.bores = bores;
    this.head = head;
  }

  @Override
  public String kind() {
    return "check valve";
  }

  @Override
  public List<String> fields() {
    List<String> fields = new ArrayList<>(List.of("type", "k", "cracking head"));
    fields.addAll(PipeReader.BORE_FIELDS);
    return fields;
  }

  @Override
  public List<String> types() {
    return catalogue.checkValveTypes();
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    Bore bore = bores.require(fields, around);
    Optional<String> type = fields.findText("type");
    Optional<CheckValveRow> known = type.flatMap(name -> catalogue.findCheckValve(name, bore));
    OptionalDouble k =
        fields.find("k", Measure.NUMBER, Limits.LOSS_COEFFICIENT, known.map(CheckValveReader::k));
    if (type.isPresent() && known.isEmpty() && k.isEmpty()) {
      fields.fault(
          "type",
          PlainText.quoted(type.get())
              + " is not in the catalogue, and its k is not given"
              + Choices.hint(type.get(), types(), "check valves"));
    }
    if (!fields.has("type") && !fields.has("k")) {
      fields.fault("give its type, for example \"type: swing\", or its k");
    }
    double crackingHead =
        fields
            .find(
                "cracking head",
                head,
                Range.NOT_NEGATIVE,
                known.map(CheckValveReader::crackingHead))
            .orElse(known.map(CheckValveRow::crackingHeadM).orElse(0.0));
    return new CheckValve(
        type.map(name -> name + " " + kind()).orElse(kind()),
        crackingHead,
        k.orElse(known.map(CheckValveRow::lossCoefficient).orElse(0.0)),
        bore,
        known.map(CheckValveRow::swings).orElse(false));
  }

  private static Quantity k(CheckValveRow known) {
    return Quantity.between(known.least(), known.lossCoefficient(), known.greatest());
  }

  private static Quantity crackingHead(CheckValveRow known) {
    return Quantity.between(
        known.leastCrackingHeadM(), known.crackingHeadM(), known.greatestCrackingHeadM());
  }
}
