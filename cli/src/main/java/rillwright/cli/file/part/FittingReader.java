package rillwright.cli.file.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.FittingLoss;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Limits;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Quantity;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Part;

/** Reads fittings. */
final class FittingReader implements PartReader {
  /** Types whose loss follows from the bores on both sides. */
  private static final Set<String> CHANGES_OF_BORE = Set.of("reducer", "enlargement");

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
  public List<String> types() {
    return catalogue.fittingTypes();
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    int count = fields.count("count");
    Optional<String> type = fields.findText("type");
    boolean changesBore = type.filter(this::changesBore).isPresent();
    if (changesBore && !fields.has("k")) {
      return new Fitting(type.get(), count, changeOfBore(fields, around), true);
    }
    Bore bore = bores.require(fields, around);
    Optional<FittingLoss> known = type.flatMap(name -> catalogue.findFitting(name, bore));
    OptionalDouble k =
        fields.find("k", Measure.NUMBER, Limits.LOSS_COEFFICIENT, known.map(FittingReader::k));
    if (type.isPresent() && known.isEmpty() && k.isEmpty()) {
      fields.fault(
          "type",
          PlainText.quoted(type.get())
              + " is not in the catalogue, and its k is not given"
              + Choices.hint(type.get(), types(), "fittings"));
    }
    if (type.isEmpty() && !fields.has("k")) {
      fields.fault("give its type, for example \"type: elbow 90\", or its k");
    }
    double lossCoefficient = k.orElse(known.map(FittingLoss::lossCoefficient).orElse(0.0));
    return new Fitting(
        type.orElse(kind()),
        count,
        new VelocityHeadLoss(lossCoefficient, bore),
        type.isEmpty() || changesBore);
  }

  private boolean changesBore(String type) {
    return catalogue
        .findFitting(type, StandingBore.STAND_IN)
        .filter(known -> CHANGES_OF_BORE.contains(known.type()))
        .isPresent();
  }

  /**
   * What a reducer or an enlargement takes: its own bore, else that of the run upstream of it,
   * against that of the run after it; where there is none, or it has the same, its own against that
   * of the run before.
   */
  private VelocityHeadLoss changeOfBore(Fields fields, Surroundings around) {
    Optional<Bore> own = bores.findOwn(fields, around);
    Optional<Bore> before = around.boreBefore().or(around::bore);
    Optional<Bore> after = around.boreAfter();
    boolean ends = own.isPresent() && (after.isEmpty() || after.equals(own));
    Optional<Bore> from = ends ? before : own.or(() -> before);
    Optional<Bore> to = ends ? own : after;
    if (from.isEmpty() || to.isEmpty()) {
      fields.fault(
          "its two bores are not known; write it between two runs, or give its smaller bore, for"
              + " example \"inside: 1.592 in\", or its k");
    } else if (from.equals(to)) {
      fields
          .ledger()
          .note(
              fields.what()
                  + ": the bore is the same on both sides, so it takes no head; give its own bore"
                  + " with \"inside\" or \"size\", or its k");
    }
    return VelocityHeadLoss.ofChange(
        from.orElse(StandingBore.STAND_IN), to.orElse(StandingBore.STAND_IN));
  }

  private static Quantity k(FittingLoss known) {
    return Quantity.between(known.least(), known.lossCoefficient(), known.greatest());
  }
}
