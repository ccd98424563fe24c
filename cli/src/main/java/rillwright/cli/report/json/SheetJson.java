package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.MONEY;

import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import rillwright.cli.json.Json;
import rillwright.cli.json.Quantity;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.text.visit.ReadingWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.SheetAnswer;
import rillwright.cli.study.jobsheet.SheetAnswer.AsSet;
import rillwright.cli.study.jobsheet.SiteLevel;
import rillwright.cli.study.jobsheet.card.CardReading;
import rillwright.cli.study.jobsheet.materials.Item;
import rillwright.cli.study.jobsheet.materials.Stock;

/** A job sheet for programs: the answers that it is put together of, its materials and its card. */
public final class SheetJson {
  private static final Shape<Item> ITEM =
      Shape.<Item>named("material", "Something to buy.")
          .member(
              "kind",
              Value.oneOf(Arrays.stream(Item.Kind.values()).map(SheetJson::word).toList()),
              "What kind of thing it is.",
              item -> word(item.what().kind()))
          .words("what", "What it is called.", item -> item.what().name())
          .words("material", "Of the pipe; empty without one.", item -> item.what().material())
          .words(
              "size",
              "As the trade says it; empty where the catalogue knows none.",
              item -> item.what().size())
          .numberOrNull(
              "lossCoefficient",
              Quantity.NUMBER,
              "K of a fitting that the file gives by nothing else; null of others.",
              item -> item.what().lossCoefficient())
          .numberOrNull("lengthM", METRES.above(0), "Net length of a pipe.", Item::lengthM)
          .numberOrNull(
              "stockLengthM",
              METRES.above(0),
              "Length of one piece as it is sold; null of what is counted.",
              item -> item.stock().stream().mapToDouble(Stock::lengthM).findFirst())
          .count("count", "Pieces to buy.", Item::count)
          .numberOrNull(
              "price", MONEY, "Of all of them; null where the file has none.", Item::price);

  private static final Shape<SiteLevel> LEVEL =
      Shape.<SiteLevel>named("siteLevel", "A level that something is built to.")
          .words("at", "The point or the line.", SiteLevel::at)
          .member(
              "kind",
              Value.oneOf(Arrays.stream(SiteLevel.Kind.values()).map(SheetJson::word).toList()),
              "What is at the level.",
              level -> word(level.kind()))
          .number(
              "levelM", METRES, "Above the mark that the file measures from.", SiteLevel::levelM)
          .numberOrNull(
              "widthM",
              METRES,
              "Of a crest or a skimmer's mouth, over whose sill water pours; null of other levels.",
              SiteLevel::widthM);

  private record Read(CardReading reading, ShownUnits units) {}

  private static final Shape<Read> READING =
      Shape.<Read>named("cardReading", "Something to read at start-up.")
          .words("at", "The point, the gauge, or the line of the pump.", read -> read.reading.at())
          .member(
              "what",
              Value.oneOf(
                  Arrays.stream(CardReading.What.class.getPermittedSubclasses())
                      .map(SheetJson::word)
                      .toList()),
              "Time to fill a vessel or to refill a pool; depth over a crest or at the brink;"
                  + " pressure; power; level of a chamber below its basin.",
              read -> word(read.reading.what().getClass()))
          .words("words", "For people.", read -> ReadingWords.of(read.reading, read.units).what())
          .words(
              "instrument", "With what.", read -> ReadingWords.of(read.reading, read.units).with())
          .member("unit", Value.oneOf("s", "m", "Pa", "W"), "Of its figures.", SheetJson::unit)
          .numberOrNull(
              "expected",
              Quantity.NUMBER,
              "What it should be, in that unit; null of a gauge that is cut off.",
              read -> read.reading.expected())
          .numberOrNull("low", Quantity.NUMBER, "The least to accept.", read -> band(read, true))
          .numberOrNull("high", Quantity.NUMBER, "The most to accept.", read -> band(read, false));

  static final Shape<SheetAnswer> SHAPE =
      Estimate.<SheetAnswer>answer(
              "sheet",
              "A job sheet: the answers that it is put together of. Valves that are marked"
                  + " adjustable are set as \"balance\" says, to the targets where more than 125 %"
                  + " of them would come; \"solve\" and \"stream\" are of the"
                  + " project so set, \"mend\" of the file as written where that project lacks"
                  + " anything.")
          .words("title", Meaning.TITLE, SheetAnswer::title)
          .list("changed", Value.words(), Meaning.CHANGED, SheetAnswer::changes)
          .orNull("firm", Value.words(), "The firm.", it -> it.papers().details().firm())
          .orNull("customer", Value.words(), "For whom.", it -> it.papers().details().customer())
          .orNull("address", Value.words(), "Where.", it -> it.papers().details().address())
          .orNull(
              "date",
              Value.words(),
              "Date of the file, year, month and day.",
              it -> it.papers().details().date().map(Object::toString))
          .member(
              "section", SectionJson.SHAPE, "Along the ways of the water.", SheetAnswer::section)
          .orNull(
              "balance",
              BalanceJson.SHAPE,
              "Settings of the valves that are marked adjustable; null where none is, no fall has"
                  + " a target, or a pump is still to be chosen.",
              it -> it.asSet().flatMap(AsSet::settings))
          .orNull(
              "solve",
              SolveJson.SHAPE,
              "What flows where; null where a pump is still to be chosen.",
              it -> it.asSet().map(set -> new SolveJson(set.solved(), true)))
          .orNull(
              "mend",
              MendJson.SHAPE,
              "What would mend it; null where a pump is still to be chosen.",
              it -> it.asSet().map(AsSet::mend))
          .orNull(
              "stream",
              StreamJson.SHAPE,
              "Streams and levels; null without streams and evaporation.",
              it -> it.asSet().flatMap(AsSet::stream).map(answer -> new StreamJson(answer, true)))
          .orNull(
              "duty",
              DutyJson.SHAPE,
              "What a pump that is still to be chosen must make; null where none is, or it cannot"
                  + " be sized.",
              it -> it.duty().map(duty -> new DutyJson(duty, true)))
          .list(
              "levels", LEVEL, "What is built to a level, the highest first.", SheetAnswer::levels)
          .list("materials", ITEM, "What it is built of.", it -> it.materials().items())
          .numberOrNull(
              "total",
              MONEY,
              "Of all that has a price; null if nothing has.",
              it -> it.materials().total())
          .truth("allPriced", "Whether everything has a price.", it -> it.materials().isPriced())
          .orNull("currency", Value.words(), Meaning.CURRENCY, it -> it.materials().currency())
          .list(
              "card",
              READING,
              "What to read at start-up.",
              it ->
                  it.asSet().stream()
                      .flatMap(set -> set.card().stream())
                      .map(reading -> new Read(reading, Shown.of(it)))
                      .toList());

  private SheetJson() {}

  /** The JSON text. */
  public static String of(SheetAnswer answer) {
    return Json.text(SHAPE, answer);
  }

  private static OptionalDouble band(Read read, boolean low) {
    return read.reading.expected().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(low ? read.reading.low() : read.reading.high());
  }

  private static String unit(Read read) {
    CardReading.What what = read.reading.what();
    if (what instanceof CardReading.Pressure) {
      return "Pa";
    }
    if (what instanceof CardReading.Power) {
      return "W";
    }
    boolean isTime = what instanceof CardReading.Fill || what instanceof CardReading.Refill;
    return isTime ? "s" : "m";
  }

  private static String word(Enum<?> kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** {@code CrestHead} is {@code crest head}. */
  private static String word(Class<?> what) {
    return what.getSimpleName().replaceAll("(?<=[a-z])([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }
}
