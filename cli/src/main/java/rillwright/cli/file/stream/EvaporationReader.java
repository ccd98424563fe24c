package rillwright.cli.file.stream;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.curves.unit.Unit;
import rillwright.solver.stream.OpenWaterEvaporation;
import rillwright.solver.stream.WaterLoss;
import rillwright.solver.water.Water;
import rillwright.solver.water.WaterProperties;

/** Reads the section {@code evaporation}. */
public final class EvaporationReader {
  private static final Range AIR = Range.between(-20, 60, "must be -4 F to 140 F (-20 C to 60 C)");
  private static final Range RATE =
      Range.between(0, Unit.MILLIMETRE_PER_DAY.toSi(50), "must be 0 to 50 mm/day (1.9 in/day)");

  private EvaporationReader() {}

  /** What evaporates from the water of a project; empty without the section. */
  public static Optional<WaterLoss> read(Fields root, Water water) {
    Optional<Node> section = root.findNode("evaporation");
    if (section.isPresent() && section.get() instanceof Scalar) {
      double rate = root.findOr("evaporation", Measure.SPEED, RATE, 0);
      return Optional.of(new WaterLoss(rate, false, 0));
    }
    return root.findFields("evaporation", List.of("rate", "splash", "air", "humidity", "wind"))
        .map(fields -> loss(fields, water, root.has("water")));
  }

  private static WaterLoss loss(Fields fields, Water water, boolean waterIsGiven) {
    boolean byWeather = fields.has("air") || fields.has("humidity") || fields.has("wind");
    if (byWeather == fields.has("rate") && fields.areSound()) {
      fields.fault(
          "give either a rate, for example \"rate: 6 mm/day\", or the weather: air, humidity and"
              + " wind");
    }
    double splash = fields.findOr("splash", Measure.SHARE, Range.SHARE, 0);
    if (!byWeather) {
      return new WaterLoss(fields.findOr("rate", Measure.SPEED, RATE, 0), false, splash);
    }
    double air = fields.require("air", Measure.TEMPERATURE, AIR, "80 F");
    double humidity = fields.require("humidity", Measure.SHARE, Range.SHARE, "50 %");
    double wind = fields.require("wind", Measure.SPEED, Range.NOT_NEGATIVE, "5 mph");
    OptionalDouble warm =
        waterIsGiven
            ? OptionalDouble.empty()
            : OptionalDouble.of(rate(WaterProperties.vapourPressurePa(air), air, humidity, wind));
    return new WaterLoss(rate(water.vapourPressurePa(), air, humidity, wind), true, warm, splash);
  }

  private static double rate(double atWaterPa, double airC, double humidity, double windMPerS) {
    return OpenWaterEvaporation.rateMPerS(
        OpenWaterEvaporation.SMALL_WATER, atWaterPa, airC, humidity, windMPerS);
  }
}
