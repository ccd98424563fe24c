package rillwright.cli.file.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.FittingLoss;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Limits;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Quantity;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Part;

/** Reads fittings. */
final class FittingReader implements PartReader {
  private final Catalogue catalogue;
  private final StandingBore bores;

  FittingReader(Catalogue catalogue, StandingBore bores) {
    this.catalogue = catalogue;
    this.bores = bores;
  }

  @Override
  public String kind() {
    return "fitting";
  }

  @Override
  public List<String> fields() {
    List<String> fields = new ArrayList<>(List.of("type", "k", "count"));
    fields.addAll(PipeReader.BORE_FIELDS);
    return fields;
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    Bore bore = bores.require(fields, around);
    int count = fields.count("count");
    Optional<String> type = fields.findText("type");
    Optional<FittingLoss> known = type.flatMap(name -> catalogue.findFitting(name, bore));
    OptionalDouble k =
        fields.find("k", Measure.NUMBER, Limits.LOSS_COEFFICIENT, known.map(FittingReader::k));
    if (type.isPresent() && known.isEmpty() && k.isEmpty()) {
      fields.fault(
          "type",
          PlainText.quoted(type.get())
              + " is not in the catalogue, and its k is not given"
              + Choices.hint(type.get(), catalogue.fittingTypes(), "fittings"));
    }
    if (!fields.has("type") && !fields.has("k")) {
      fields.fault("give its type, for example \"type: elbow 90\", or its k");
    }
    double lossCoefficient = k.orElse(known.map(FittingLoss::lossCoefficient).orElse(0.0));
    return new Fitting(type.orElse(kind()), count, lossCoefficient, bore);
  }

  private static Quantity k(FittingLoss known) {
    return Quantity.between(known.least(), known.lossCoefficient(), known.greatest());
  }
}
