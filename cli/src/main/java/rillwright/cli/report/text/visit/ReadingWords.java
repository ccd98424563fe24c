package rillwright.cli.report.text.visit;

import java.util.List;
import java.util.stream.Collectors;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.card.CardReading;
import rillwright.cli.study.jobsheet.card.CardReading.CrestHead;
import rillwright.cli.study.jobsheet.card.CardReading.Fill;
import rillwright.cli.study.jobsheet.card.CardReading.Level;
import rillwright.cli.study.jobsheet.card.CardReading.Power;
import rillwright.cli.study.jobsheet.card.CardReading.Pressure;
import rillwright.cli.study.jobsheet.card.CardReading.Refill;
import rillwright.cli.study.jobsheet.card.CardReading.Vessel;
import rillwright.cli.study.jobsheet.card.CardReading.What;
import rillwright.cli.study.jobsheet.card.CardReading.When;
import rillwright.solver.network.LineName;

/**
 * A reading in words.
 *
 * @param what is read
 * @param with the instrument
 * @param expect what it should be
 * @param between what to accept
 * @param hints that belong to it
 */
public record ReadingWords(
    String what, String with, String expect, String between, List<Hint> hints) {
  private static final String RULER = "ruler";

  /** The words for a reading. */
  public static ReadingWords of(CardReading reading, ShownUnits units) {
    What what = reading.what();
    if (what instanceof Fill fill) {
      String vessel =
          fill.vessel() == Vessel.BUCKET ? units.tools().bucket() : units.tools().barrel();
      return new ReadingWords(
          "time to fill a " + vessel,
          "stopwatch",
          units.seconds(reading.expected().orElse(0)),
          units.secondsBetween(reading.low(), reading.high()),
          List.of(Hint.TIMED));
    }
    if (what instanceof Refill) {
      return new ReadingWords(
          "refill of a pool, " + units.tools().pool(),
          "stopwatch",
          units.seconds(reading.expected().orElse(0)),
          "\u00b1" + units.share(reading.high() / reading.expected().orElse(1) - 1),
          List.of(Hint.REFILL));
    }
    if (what instanceof Power power) {
      return new ReadingWords(
          "power of " + power.pump(),
          "watt meter",
          units.power(reading.expected().orElse(0)),
          units.powers(reading.low(), reading.high()),
          List.of(Hint.WATTS));
    }
    return what instanceof Pressure pressure
        ? pressure(reading, pressure, units)
        : depth(reading, units);
  }

  private static ReadingWords depth(CardReading reading, ShownUnits units) {
    boolean isLevel = reading.what() instanceof Level;
    return new ReadingWords(
        depthOf(reading.what(), units),
        RULER,
        units.tools().ruler().with(reading.expected().orElse(0)),
        units.tools().ruler().between(reading.low(), reading.high()),
        List.of(isLevel ? Hint.LEVEL : Hint.CREST));
  }

  private static String depthOf(What what, ShownUnits units) {
    if (what instanceof CrestHead crest) {
      return "water over the crest, " + units.distance(crest.upstreamM()) + " upstream of it";
    }
    return what instanceof Level level
        ? (level.above() ? "level above \"" : "level below \"") + level.basin().value() + "\""
        : "thickness at the brink";
  }

  private static ReadingWords pressure(CardReading reading, Pressure pressure, ShownUnits units) {
    boolean isCutOff = reading.expected().isEmpty();
    return new ReadingWords(
        when(pressure),
        "gauge",
        isCutOff ? "cut off" : units.pressure(reading.expected().getAsDouble()),
        isCutOff ? "" : units.pressures(reading.low(), reading.high()),
        pressure.when() == When.RUNNING
            ? List.of()
            : pressure.when() == When.VALVE_SHUT
                ? List.of(Hint.SHUT_OFF)
                : reading.low() > 0 ? List.of(Hint.PUMP_OFF, Hint.HOLDS) : List.of(Hint.PUMP_OFF));
  }

  private static String when(Pressure pressure) {
    return switch (pressure.when()) {
      case RUNNING -> "pump running";
      case VALVE_SHUT -> "valve of " + names(pressure.shut()) + " shut, 10 s at most";
      case PUMP_OFF -> "pump off, water standing";
    };
  }

  private static String names(List<LineName> lines) {
    return lines.stream()
        .map(name -> '"' + name.value() + '"')
        .collect(Collectors.joining(" and "));
  }
}
