package rillwright.cli.file.pump;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.NotAQuantity;
import rillwright.cli.file.quantity.QuantityReader;
import rillwright.cli.file.quantity.Range;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.Price;
import rillwright.curves.sheet.SheetFacts;
import rillwright.curves.sheet.SpeedRange;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;

/** Reads a data sheet that is written in the project file itself. */
final class InlineSheet {
  static final List<String> FIELDS =
      List.of(
          "points",
          "maker",
          "price",
          "kind",
          "min submergence",
          "variable speed",
          "solids",
          "remarks");

  private static final Range SPEED = new Range(0, false, 2, "must be above 0 % and up to 200 %");

  private final Measure head;

  /**
   * A reader.
   *
   * @param head how a head may be written
   */
  InlineSheet(Measure head) {
    this.head = head;
  }

  /** The sheet; empty, with the faults noted, if it is wrong. */
  Optional<DataSheet> read(String name, Fields fields) {
    List<PumpPoint> points = points(fields);
    SheetFacts facts = facts(fields);
    if (!fields.areSound()) {
      return Optional.empty();
    }
    if (points.size() < 2) {
      fields.fault("points", "a pump needs two points or more, each with a flow and a head");
      return Optional.empty();
    }
    try {
      return Optional.of(new DataSheet(name, new PumpCurve(points), facts, List.of()));
    } catch (IllegalArgumentException e) {
      fields.fault("points", e.getMessage());
      return Optional.empty();
    }
  }

  private List<PumpPoint> points(Fields fields) {
    List<PumpPoint> points = new ArrayList<>();
    for (Fields row : fields.listRows("points", List.of("flow", "head", "power"))) {
      double flow = row.require("flow", Measure.FLOW, Range.NOT_NEGATIVE, "1000 gph");
      double headM = row.require("head", head, Range.NOT_NEGATIVE, "29.5 ft");
      OptionalDouble power = row.find("power", Measure.POWER, Range.NOT_NEGATIVE);
      int before = points.size() - 1;
      if (row.areSound() && before >= 0 && flow <= points.get(before).flowM3PerS()) {
        row.fault("flow", "each flow must be greater than the one before");
      }
      if (!points.isEmpty() && points.get(0).powerW().isPresent() != power.isPresent()) {
        row.fault("power", "write the power at every point or at none");
      }
      points.add(new PumpPoint(flow, headM, power));
    }
    return points;
  }

  private static SheetFacts facts(Fields fields) {
    return new SheetFacts(
        fields.findText("maker"),
        fields
            .findPrice("price", List.of())
            .map(price -> new Price(price.amount(), price.currency())),
        fields.findText("kind"),
        fields.find("min submergence", Measure.SMALL_LENGTH, Range.NOT_NEGATIVE),
        speeds(fields),
        fields.find("solids", Measure.SMALL_LENGTH, Range.NOT_NEGATIVE),
        fields.findText("remarks").stream().toList());
  }

  /** {@code 40..100 %} or {@code 40 % .. 100 %}. */
  private static Optional<SpeedRange> speeds(Fields fields) {
    Optional<String> text = fields.findText("variable speed");
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      String[] ends = text.get().split("\\.\\.", 2);
      if (ends.length == 2) {
        String first = ends[0].contains("%") ? ends[0] : ends[0].strip() + " %";
        double least = QuantityReader.read(first, Measure.SHARE, SPEED).middle();
        double greatest = QuantityReader.read(ends[1], Measure.SHARE, SPEED).middle();
        if (least <= greatest) {
          return Optional.of(new SpeedRange(least, greatest));
        }
      }
      fields.fault("variable speed", "write the least and the greatest, such as \"40..100 %\"");
    } catch (NotAQuantity e) {
      fields.fault("variable speed", e.getMessage());
    }
    return Optional.empty();
  }
}
