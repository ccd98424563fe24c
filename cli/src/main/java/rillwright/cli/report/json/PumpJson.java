package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.MONEY;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.POWER;
import static rillwright.cli.json.Quantity.SHARE;

import java.util.List;
import java.util.Optional;
import rillwright.cli.json.Json;
import rillwright.cli.json.Quantity;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.check.SheetRemarks;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.sheet.MeterCurrent;
import rillwright.cli.study.sheet.PumpSheets;
import rillwright.cli.study.sheet.SheetFigures;
import rillwright.cli.study.sheet.SheetFigures.CurveFigures;
import rillwright.curves.sheet.fact.Nameplate;
import rillwright.curves.sheet.fact.Price;
import rillwright.curves.sheet.fact.SheetFacts;
import rillwright.curves.sheet.fact.SpeedRange;
import rillwright.solver.law.pump.PumpPoint;

/** Data sheets for programs. */
public final class PumpJson {
  private static final Quantity VOLTS = Quantity.of("V").above(0);
  private static final Quantity AMPERES = Quantity.of("A").from(0);

  private record Understood(SheetFigures figures, List<String> remarks) {
    SheetFacts facts() {
      return figures.sheet().facts();
    }

    Optional<MeterCurrent> current() {
      return figures.currentAt(figures.ratedPowerW());
    }
  }

  private static final Shape<PumpPoint> POINT =
      Shape.<PumpPoint>named("sheetPoint", "A point as published.")
          .number("flowM3PerS", FLOW.from(0), "Flow.", PumpPoint::flowM3PerS)
          .number("headM", METRES.from(0), "Head.", PumpPoint::headM)
          .numberOrNull("powerW", POWER, "Electrical input.", PumpPoint::powerW)
          .numberOrNull(
              "npshRequiredM", METRES.from(0), "NPSH required.", PumpPoint::npshRequiredM);

  private static final Shape<CurveFigures> BEST =
      Shape.<CurveFigures>of()
          .number("flowM3PerS", FLOW.from(0), "Flow.", CurveFigures::flowM3PerS)
          .number("headM", METRES, "Head.", CurveFigures::headM)
          .numberOrNull("powerW", POWER, "Electrical input.", CurveFigures::powerW)
          .numberOrNull(
              "wireToWater",
              SHARE,
              "Water power over electrical input.",
              CurveFigures::wireToWater);

  private static final Shape<Price> PRICE =
      Shape.<Price>of()
          .number("amount", MONEY, "How much.", Price::amount)
          .words("currency", "Three letters.", Price::currency);

  private static final Shape<SpeedRange> SPEEDS =
      Shape.<SpeedRange>of()
          .number("least", SHARE.above(0), "Share of full speed.", SpeedRange::least)
          .number("greatest", SHARE.above(0), "Share of full speed.", SpeedRange::greatest);

  private static final Shape<MeterCurrent> CURRENT =
      Shape.<MeterCurrent>of()
          .number(
              "leastA",
              AMPERES,
              "At the sheet's power factor; without one at 1.",
              MeterCurrent::leastA)
          .number(
              "greatestA",
              AMPERES,
              "At the sheet's power factor; without one at 0.6 (common practice).",
              MeterCurrent::greatestA);

  private static final Shape<Nameplate> NAMEPLATE =
      Shape.<Nameplate>of()
          .numberOrNull("ratedPowerW", POWER, "Rated input, as written.", Nameplate::ratedPowerW)
          .numberOrNull(
              "voltageV", VOLTS, "Of the supply: as written, or --volts.", Nameplate::voltageV)
          .numberOrNull(
              "powerFactor", NUMBER.above(0).upTo(1), "As written.", Nameplate::powerFactor)
          .count("phases", "1 unless the sheet says 3.", Nameplate::phases);

  private static final Shape<Understood> SHEET =
      Shape.<Understood>named("dataSheet", "A pump's data sheet.")
          .words("pump", "The file's name without its ending.", it -> it.figures.model())
          .list(
              "points", POINT, "As published, in order of flow.", it -> it.figures.curve().points())
          .number(
              "shutOffHeadM",
              METRES,
              "Head at no flow.",
              it -> it.figures.curve().publishedShutOffHeadM())
          .number(
              "greatestFlowM3PerS",
              FLOW.from(0),
              "Where the sheet ends.",
              it -> it.figures.curve().lastFlowM3PerS())
          .truth(
              "levelled",
              "Whether its curve had a hump that is levelled.",
              it -> it.figures.curve().isLevelled())
          .orNull(
              "bestEfficiency",
              BEST,
              "Where it makes the most flow and head of a watt; null without powers.",
              it -> it.figures.best())
          .orNull("maker", Value.words(), "As written.", it -> it.facts().maker())
          .orNull("pumpKind", Value.words(), "As written.", it -> it.facts().kind())
          .orNull("price", PRICE, "Of one.", it -> it.facts().price())
          .numberOrNull(
              "minSubmergenceM",
              METRES,
              "Water over its inlet, at least.",
              it -> it.facts().needs().minSubmergenceM())
          .numberOrNull(
              "npshRequiredM",
              METRES,
              "At any flow, where the sheet says one figure.",
              it -> it.facts().needs().npshRequiredM())
          .numberOrNull(
              "selfPrimingM",
              METRES,
              "Height over the water from which it primes itself.",
              it -> it.facts().needs().selfPrimingM())
          .orNull("speeds", SPEEDS, "Where it may run.", it -> it.facts().variableSpeed())
          .numberOrNull("solidsM", METRES, "Largest that it passes.", it -> it.facts().solidsM())
          .member("nameplate", NAMEPLATE, "Its supply.", it -> it.figures.plate())
          .orNull(
              "ratedCurrent",
              CURRENT,
              "On one conductor at the rated power, else at the largest of its curve; null without"
                  + " a power or a voltage.",
              Understood::current)
          .list("remarks", Value.words(), "Its other comments.", it -> it.facts().remarks())
          .list(
              "notes", Value.words(), "What is doubtful, or taken beyond it.", Understood::remarks);

  static final Shape<PumpSheets> SHAPE =
      Estimate.<PumpSheets>answer("pump", "What was understood of data sheets.")
          .list("sheets", SHEET, "In the order asked.", PumpJson::understood);

  private PumpJson() {}

  /** The JSON text. */
  public static String of(PumpSheets answer) {
    return Json.text(SHAPE, answer);
  }

  private static List<Understood> understood(PumpSheets answer) {
    return answer.sheets().stream()
        .map(it -> new Understood(it, SheetRemarks.of(it, Shown.of(answer.show()))))
        .toList();
  }
}
