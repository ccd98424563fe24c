package rillwright.cli.file.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Limits;
import rillwright.cli.file.pump.PumpTable;
import rillwright.cli.file.pump.PumpsReader;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.MapNode;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.pump.PumpSet.Arrangement;
import rillwright.solver.law.pump.SuctionNeeds;
import rillwright.solver.network.Part;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Pump;
import rillwright.solver.network.PumpInlet;

/** Reads pumps. */
final class PumpReader implements PartReader {
  private static final Range SPEED = Range.between(0, 2, "must be 0 % to 200 %");
  private static final String SHEET_ENDING = ".csv";
  private static final String SERIES = "series";

  private final PumpTable pumps;
  private final StandingBore bores;

  PumpReader(PumpTable pumps, StandingBore bores) {
    this.pumps = pumps;
    this.bores = bores;
  }

  @Override
  public String kind() {
    return "pump";
  }

  @Override
  public List<String> fields() {
    return List.of(
        "model", "speed", "count", "arranged", "runs back", "elevation", "inlet", "screen");
  }

  @Override
  public boolean takesWaterIn() {
    return true;
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    Optional<String> model = fields.requireText("model", "demo 40");
    double speed = fields.findOr("speed", Measure.SHARE, SPEED, 1);
    int count = fields.count("count");
    boolean inSeries =
        fields.findWord("arranged", List.of("parallel", SERIES)).filter(SERIES::equals).isPresent();
    Optional<VelocityHeadLoss> runsBack = runsBack(fields, around);
    Optional<DataSheet> sheet = model.flatMap(pumps::findSheet);
    boolean planned = model.filter(PumpsReader.TO_BE_CHOSEN::equals).isPresent();
    if (model.isPresent() && !planned && !pumps.names().contains(model.get())) {
      unknown(fields, model.get());
    }
    PumpInlet inlet =
        new PumpInlet(
            fields.find("elevation", Measure.LENGTH, Range.ANY),
            fields.find("inlet", Measure.SMALL_LENGTH, Limits.BORE).stream()
                .mapToObj(Bore::new)
                .findFirst(),
            sheet.map(known -> known.facts().needs()).orElse(SuctionNeeds.NONE),
            ScreenReader.find(fields));
    if (planned || sheet.isEmpty()) {
      return new PlannedPump(inlet);
    }
    Arrangement arrangement = inSeries ? Arrangement.SERIES : Arrangement.PARALLEL;
    return new Pump(
        model.get(), new PumpSet(sheet.get().curve(), speed, count, arrangement, runsBack), inlet);
  }

  private void unknown(Fields fields, String model) {
    if (!model.toLowerCase(Locale.ROOT).endsWith(SHEET_ENDING)) {
      String message = "there is no pump " + PlainText.quoted(model) + " in the section \"pumps\"";
      fields.unknown("model", message, model, pumps.names());
      return;
    }
    int folderEnd = Math.max(model.lastIndexOf('/'), model.lastIndexOf('\\'));
    String name =
        model.substring(folderEnd + 1, model.length() - SHEET_ENDING.length()).replace('-', ' ');
    fields.fault(
        "model",
        "a data sheet gets a name in the section \"pumps\"; write there "
            + PlainText.quoted(name + ": " + model)
            + ", and here "
            + PlainText.quoted("pump: " + name));
  }

  private Optional<VelocityHeadLoss> runsBack(Fields fields, Surroundings around) {
    boolean isMap = fields.findNode("runs back").filter(MapNode.class::isInstance).isPresent();
    if (!isMap) {
      if (fields.isYes("runs back", false)) {
        fields.fault("runs back", "say against which loss, for example \"runs back: {k: 15}\"");
      }
      return Optional.empty();
    }
    return fields
        .findFields("runs back", List.of("k", "material", "size", "inside"))
        .map(
            back ->
                new VelocityHeadLoss(
                    back.require("k", Measure.NUMBER, Limits.LOSS_COEFFICIENT, "15"),
                    bores.require(back, around)));
  }
}
