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
import rillwright.cli.file.tree.Scalar;
import rillwright.curves.sheet.CurveRules;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.WrittenPoint;
import rillwright.curves.sheet.fact.Nameplate;
import rillwright.curves.sheet.fact.SheetFacts;
import rillwright.curves.sheet.fact.SpeedRange;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.SuctionNeeds;

/** Reads a data sheet that is written in the project file itself. */
final class InlineSheet {
  static final List<String> FIELDS =
      List.of(
          "points",
          UnknownPump.FIELD,
          "maker",
          "price",
          "kind",
          "min submergence",
          "npsh required",
          "self priming",
          "variable speed",
          "solids",
          "voltage",
          "rated",
          "phases",
          "note");

  private static final Range SPEED = new Range(0, false, 2, "must be above 0 % and up to 200 %");

  private static final Range VOLTS =
      new Range(0, false, Nameplate.GREATEST_VOLTAGE_V, "must be above 0 V and up to 1000 V");

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
    if (fields.has(UnknownPump.FIELD)) {
      if (fields.has("points")) {
        fields.fault(UnknownPump.FIELD, "give either points or what is unknown, not both");
      }
      return UnknownPump.read(name, fields, head, facts(fields));
    }
    List<InlinePoint> written = new ArrayList<>();
    for (Fields row : fields.listRows("points", List.of("flow", "head", "power", "npshr"))) {
      written.add(new InlinePoint(row, pointOf(row, written.size() + 1)));
    }
    SheetFacts facts = facts(fields);
    List<InlinePoint> ordered = CurveRules.inOrder(written, InlinePoint::point);
    List<WrittenPoint> points = ordered.stream().map(InlinePoint::point).toList();
    if (fields.areSound()) {
      CurveRules rules = new CurveRules(faultsOf(ordered, fields));
      rules.checkEach(points);
      rules.checkTogether(points);
    }
    return fields.areSound()
        ? Optional.of(
            new DataSheet(
                name,
                new PumpCurve(points.stream().map(WrittenPoint::point).toList()),
                facts,
                List.of(),
                !ordered.equals(written),
                Optional.empty()))
        : Optional.empty();
  }

  /** A point and where it is written. */
  private record InlinePoint(Fields row, WrittenPoint point) {}

  private WrittenPoint pointOf(Fields row, int number) {
    return new WrittenPoint(
        "point " + number,
        written(row, "flow"),
        written(row, "head"),
        written(row, "power"),
        new PumpPoint(
            row.require("flow", Measure.FLOW, Range.NOT_NEGATIVE, "1000 gph"),
            row.require("head", head, Range.NOT_NEGATIVE, "29.5 ft"),
            row.find("power", Measure.POWER, Range.NOT_NEGATIVE),
            row.find("npshr", Measure.LENGTH, Range.NOT_NEGATIVE)));
  }

  private static String written(Fields row, String field) {
    return row.findNode(field)
        .filter(Scalar.class::isInstance)
        .map(node -> ((Scalar) node).text())
        .orElse("");
  }

  private static CurveRules.Faults faultsOf(List<InlinePoint> rows, Fields sheet) {
    return new CurveRules.Faults() {
      @Override
      public void at(int index, String column, String message) {
        rows.get(index).row().fault(column, message);
      }

      @Override
      public void together(String message) {
        sheet.fault("points", message);
      }
    };
  }

  private static SheetFacts facts(Fields fields) {
    return new SheetFacts(
        fields.findText("maker"),
        fields.findPrice("price", List.of()),
        fields.findText("kind"),
        new SuctionNeeds(
            fields.find("min submergence", Measure.SMALL_LENGTH, Range.NOT_NEGATIVE),
            fields.find("npsh required", Measure.LENGTH, Range.NOT_NEGATIVE),
            fields.find("self priming", Measure.LENGTH, Range.NOT_NEGATIVE)),
        speeds(fields),
        fields.find("solids", Measure.SMALL_LENGTH, Range.NOT_NEGATIVE),
        plate(fields),
        fields.findText("note").stream().toList());
  }

  private static Nameplate plate(Fields fields) {
    OptionalDouble volts =
        fields.find(fields.has("voltage") ? "voltage" : "rated", Measure.VOLTAGE, VOLTS);
    boolean three = fields.findWord("phases", List.of("1", "3")).filter("3"::equals).isPresent();
    return new Nameplate(OptionalDouble.empty(), volts, OptionalDouble.empty(), three ? 3 : 1);
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
