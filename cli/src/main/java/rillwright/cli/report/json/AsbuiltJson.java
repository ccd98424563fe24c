package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.SHARE;

import java.util.Optional;
import rillwright.cli.json.Json;
import rillwright.cli.json.Quantity;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.report.weak.LeftOutWords;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.study.asbuilt.AsbuiltAnswer;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Compared;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.FallFlow;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Narrowing;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.SizeChance;
import rillwright.cli.study.asbuilt.LearntPump;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.uncertainty.posterior.Posterior.Band;

/** What readings say of what was not known, for programs. */
public final class AsbuiltJson {
  private static final ReadingWords WORDS = new ReadingWords(ShownUnits.METRIC);
  private static final Quantity CHANCE = SHARE.from(0).upTo(1);

  private static final Shape<Band> OF_QUANTITY = band(Quantity.of("base unit of the quantity, SI"));
  private static final Shape<Band> OF_FLOW = band(FLOW);

  private static Shape<Band> band(Quantity quantity) {
    return Shape.<Band>of()
        .number("p5", quantity, "It is less in one case of twenty.", Band::p5)
        .number("p50", quantity, "It is less in every other case.", Band::p50)
        .number("p95", quantity, "It is more in one case of twenty.", Band::p95);
  }

  private static final Shape<SizeChance> SIZE =
      Shape.<SizeChance>of()
          .words("size", "Which one.", SizeChance::size)
          .number("before", CHANCE, "How likely it is by the file.", SizeChance::before)
          .number("after", CHANCE, "How likely the readings leave it.", SizeChance::after);

  private static final Shape<AsbuiltAnswer.Quantity> QUANTITY =
      Shape.<AsbuiltAnswer.Quantity>of()
          .member(
              "quantity",
              Value.someWords(),
              "Which one, as --set addresses it: lines.intake.skimmer.clogged.",
              it -> it.named().address())
          .words(
              "written",
              "What the file says: 0 % .. 40 %.",
              it -> it.named().quantity().written().text())
          .member("prior", OF_QUANTITY, "What the file says of it.", AsbuiltAnswer.Quantity::prior)
          .member(
              "posterior",
              OF_QUANTITY,
              "What the readings leave of that.",
              AsbuiltAnswer.Quantity::posterior)
          .ifAny(
              "sizes",
              Value.list(SIZE),
              "Of a pipe whose size is not known: how likely each is; its bands are of its bore.",
              it -> Optional.of(it.chances()).filter(sizes -> !sizes.isEmpty()));

  private static final Shape<FallFlow> FALL =
      Shape.<FallFlow>of()
          .member("before", OF_FLOW, "Flow by what the file says.", FallFlow::before)
          .member("after", OF_FLOW, "Flow by what the readings leave of that.", FallFlow::after);

  private static final Shape<Compared> READING =
      Shape.<Compared>of()
          .words("reading", "What was read where.", it -> WORDS.name(it.reading().what()))
          .number(
              "read",
              Quantity.of("SI"),
              "What it showed; of a look 1 if something was amiss, else 0; of a handle degrees.",
              it -> it.reading().value())
          .numberOrNull(
              "expected",
              Quantity.of("SI"),
              "What it is expected to show by all readings together, of a look how likely 1 is;"
                  + " null where nothing tells, and the reading does not count.",
              Compared::expected)
          .numberOrNull(
              "deviations",
              NUMBER,
              "By how many standard deviations of its error it is above that.",
              Compared::deviations);

  private static final Shape<Reading> LEFT_OUT =
      Shape.<Reading>of()
          .words("reading", "What was read where.", it -> WORDS.name(it.what()))
          .words("reason", "Why it does not count here.", it -> LeftOutWords.why(it.what()));

  private static final Shape<Narrowing> NEXT =
      Shape.<Narrowing>of()
          .words("reading", "What would be read where.", it -> WORDS.name(it.what()))
          .byName(
              "left",
              CHANCE,
              "How wide the band of each flow would be, as a share of now, by name.",
              Narrowing::left,
              PointName::value);

  private static final Shape<LearntPump.Point> POINT =
      Shape.<LearntPump.Point>of()
          .number("flowM3PerS", FLOW.from(0), "Flow.", LearntPump.Point::flowM3PerS)
          .member("head", band(METRES), "Head at that flow.", LearntPump.Point::headM);

  private static final Shape<LearntPump.Spot> SPOT =
      Shape.<LearntPump.Spot>of()
          .words("when", "The state of the job.", spot -> spot.when().name())
          .number(
              "flowM3PerS",
              FLOW.from(0),
              "Flow of one pump at full speed, as read or, where it was not, as expected.",
              LearntPump.Spot::flowM3PerS)
          .truth("flowRead", "Whether it was read, or nothing flows.", LearntPump.Spot::isFlowRead)
          .number(
              "flowWithinM3PerS",
              FLOW.from(0),
              "Half the width of the 95 % interval of the error of what it was read with alone; 0"
                  + " where it was not read.",
              LearntPump.Spot::flowWithinM3PerS)
          .number(
              "headM",
              METRES,
              "Head of one pump at full speed, by the gauge and what is lost on the way to it.",
              LearntPump.Spot::headM)
          .number(
              "headWithinM",
              METRES.from(0),
              "Half the width of the 95 % interval of the gauge's error alone.",
              LearntPump.Spot::headWithinM);

  private static final Shape<LearntPump> PUMP =
      Shape.<LearntPump>of()
          .list("points", POINT, "Its curve, from no flow on.", LearntPump::points)
          .list("read", SPOT, "What was read of it, in the order of the file.", LearntPump::spots);

  static final Shape<AsbuiltAnswer> SHAPE =
      Estimate.<AsbuiltAnswer>answer(
              "asbuilt",
              "What readings say of what was not known exactly, assuming that nothing is wrong.")
          .words("title", Meaning.TITLE, AsbuiltAnswer::title)
          .ifAny(
              "changed",
              Value.list(Value.words()),
              Meaning.CHANGED,
              answer -> Optional.of(answer.changes()).filter(changes -> !changes.isEmpty()))
          .list(
              "quantities",
              QUANTITY,
              "What was not known exactly, in the order of the file.",
              AsbuiltAnswer::quantities)
          .each(
              "falls",
              FALL,
              "Falls and outlets, by name.",
              AsbuiltAnswer::falls,
              fall -> fall.name().value())
          .list(
              "readings",
              READING,
              "What was read, in the order of the file.",
              AsbuiltAnswer::readings)
          .truth(
              "fits",
              "Whether the readings are as likely as one in a thousand by chi-square within all"
                  + " that is possible.",
              AsbuiltAnswer::fits)
          .number(
              "chiSquare",
              NUMBER.from(0),
              "The least sum of squared deviations of readings and quantities together; looks do"
                  + " not count, nor for \"fits\".",
              AsbuiltAnswer::chiSquare)
          .list(
              "leftOut",
              LEFT_OUT,
              "What was read or seen that only tells of faults, in the order of the file.",
              AsbuiltAnswer::leftOut)
          .list(
              "next",
              NEXT,
              "Readings still to be taken that would narrow the flows, the best first.",
              AsbuiltAnswer::next)
          .each(
              "pumps",
              PUMP,
              "Pumps without a data sheet, by name: what the readings leave of their curve.",
              AsbuiltAnswer::pumps,
              LearntPump::name);

  private AsbuiltJson() {}

  /** The JSON text. */
  public static String of(AsbuiltAnswer answer) {
    return Json.text(SHAPE, answer);
  }
}
