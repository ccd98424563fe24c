package rillwright.cli.file.point;

import java.util.List;
import java.util.Optional;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.Lip;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Limits;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.law.weir.ThinPlateWeir;
import rillwright.solver.law.weir.VNotchWeir;
import rillwright.solver.law.weir.Weir;

/** Reads the {@code width}, {@code lip} and {@code weir} of a fall, a step or a pool. */
public final class CrestReader {
  private static final String USUAL_LIP = "stone";
  private static final String THIN_PLATE = "thin plate";
  private static final String BROAD = "broad";
  private static final String V_NOTCH = "v notch";
  private static final List<String> SHAPES = List.of(THIN_PLATE, BROAD, V_NOTCH);
  private static final List<String> WEIR_FIELDS =
      List.of("discharge coefficient", "shape", "height", "channel width", "angle");

  /** C of a broad crest, m^½/s; common practice, no source. */
  private static final double BROAD_COEFFICIENT = 1.55;

  /** By what share a depth may be off; common practice, no source. */
  private static final double MADE_LIP_BAND = 0.15;

  private static final double NATURAL_BAND = 0.30;

  private static final Range ANGLE =
      new Range(0, false, 179, "must be an angle of more than 0 and up to 179 degrees");
  private static final Range PLATE_WIDTH =
      Range.between(0.0011, Range.LARGEST, "must be wider than 1 mm");

  private final Catalogue catalogue;

  /** A reader that knows the catalogue's lips. */
  public CrestReader(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The crest of a fall; with faults noted, a stand-in. */
  public Crest read(Fields fall) {
    return read(fall, "width");
  }

  /**
   * A crest.
   *
   * @param widthField the field that says how wide it is
   */
  public Crest read(Fields fall, String widthField) {
    if (!fall.has("weir")) {
      double widthM = width(fall, widthField, Range.POSITIVE);
      Lip lip = lip(fall);
      return new Crest(widthM, new PowerWeir(lip.coefficient(), widthM, lip.brink()), lip.band());
    }
    if (fall.has("lip")) {
      fall.ledger().note(fall.what() + ": its weir is used, not its lip");
      lip(fall);
    }
    return fall.findFields("weir", WEIR_FIELDS)
        .map(weir -> crest(fall, widthField, weir))
        .orElseGet(() -> simple(width(fall, widthField, Range.POSITIVE), 1, MADE_LIP_BAND));
  }

  private static double width(Fields fall, String widthField, Range range) {
    return fall.require(widthField, Measure.SMALL_LENGTH, range, "30 in");
  }

  private Lip lip(Fields fall) {
    String name = fall.findText("lip").orElse(USUAL_LIP);
    Optional<Lip> lip = catalogue.findLip(name);
    if (lip.isEmpty()) {
      fall.fault(
          "lip",
          PlainText.quoted(name) + " is not known" + Choices.hint(name, catalogue.lips(), "lips"));
    }
    return lip.or(() -> catalogue.findLip(USUAL_LIP)).orElseThrow();
  }

  private static Crest simple(double widthM, double coefficient, double band) {
    return new Crest(widthM, new PowerWeir(coefficient, widthM, BrinkRule.FREE_OVERFALL), band);
  }

  private static Crest crest(Fields fall, String widthField, Fields weir) {
    boolean byCoefficient = weir.has("discharge coefficient");
    if (byCoefficient == weir.has("shape")) {
      weir.fault("give either a discharge coefficient or a shape (" + Choices.listed(SHAPES) + ")");
    }
    String shape = weir.findWord("shape", SHAPES).orElse("");
    refuseStrays(weir, shape);
    return switch (shape) {
      case V_NOTCH -> notch(fall, widthField, weir);
      case THIN_PLATE -> thinPlate(width(fall, widthField, PLATE_WIDTH), weir);
      case BROAD ->
          simple(width(fall, widthField, Range.POSITIVE), BROAD_COEFFICIENT, NATURAL_BAND);
      default -> byCoefficient(width(fall, widthField, Range.POSITIVE), weir);
    };
  }

  private static Crest notch(Fields fall, String widthField, Fields weir) {
    double angle = weir.require("angle", Measure.ANGLE, ANGLE, "90");
    double widthM = fall.findOr(widthField, Measure.SMALL_LENGTH, Range.POSITIVE, 0);
    return new Crest(widthM, new VNotchWeir(angle), MADE_LIP_BAND);
  }

  private static Crest byCoefficient(double widthM, Fields weir) {
    double coefficient =
        weir.findOr("discharge coefficient", Measure.NUMBER, Limits.DISCHARGE_COEFFICIENT, 1);
    Weir law = PowerWeir.ofDischargeCoefficient(coefficient, widthM);
    return new Crest(widthM, law, MADE_LIP_BAND);
  }

  /** A field that belongs to another shape is not passed over in silence. */
  private static void refuseStrays(Fields weir, String shape) {
    if (!shape.equals(V_NOTCH) && weir.has("angle")) {
      weir.fault("angle", "only a weir of shape \"v notch\" has an angle");
    }
    for (String field : List.of("height", "channel width")) {
      if (!shape.equals(THIN_PLATE) && weir.has(field)) {
        weir.fault(field, "only a weir of shape \"thin plate\" has this");
      }
    }
  }

  private static Crest thinPlate(double widthM, Fields weir) {
    double height = weir.require("height", Measure.SMALL_LENGTH, Range.POSITIVE, "8 in");
    double channel = weir.findOr("channel width", Measure.SMALL_LENGTH, Range.POSITIVE, widthM);
    if (channel < widthM) {
      if (weir.areSound()) {
        weir.fault("channel width", "the channel must be at least as wide as the weir in it");
      }
      channel = widthM;
    }
    return new Crest(widthM, new ThinPlateWeir(widthM, height, channel), MADE_LIP_BAND);
  }
}
