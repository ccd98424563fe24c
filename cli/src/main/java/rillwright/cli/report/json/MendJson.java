package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.MONEY;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.POWER;
import static rillwright.cli.json.Quantity.VOLUME;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.json.Json;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.mend.RemedyWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.bound.Bound;
import rillwright.cli.study.mend.change.Work;
import rillwright.cli.study.mend.search.Searched;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.Room;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;

/** What would mend a job, for programs. */
public final class MendJson {
  private record Listed(Remedy remedy, Network network, ShownUnits units) {}

  private static final Shape<Need> NEED =
      Shape.<Need>of()
          .words("at", "The point or line.", Need::at)
          .words("code", "As findings call it.", Need::code)
          .orNull(
              "condition",
              Value.words(),
              "Of the site, in which it is so; null where it is so as written.",
              Need::condition)
          .numberOrNull("targetM3PerS", FLOW, "Its target; null without one.", Need::targetM3PerS)
          .number("hasM3PerS", FLOW, "What flows there.", Need::hasM3PerS);

  private static final Shape<Room> ROOM =
      Shape.<Room>of()
          .words("pond", "Its name.", it -> it.pond().value())
          .number(
              "volumeM3",
              VOLUME,
              "Its water above the level at which it starves while it runs; 0 if none is.",
              Room::volumeM3)
          .numberOrNull(
              "daysToStarve",
              NUMBER.from(0),
              "Days that this lasts without topping up; null where no evaporation is known.",
              Room::days)
          .truth(
              "little",
              "Whether it starves, lasts less than a week, or that much more may be in transit than"
                  + " is computed.",
              Room::isLittle);

  private static final Shape<Listed> REMEDY =
      Shape.<Listed>of()
          .list(
              "for",
              Value.words(),
              "Points whose need it meets; where it does not mend, points that it helps.",
              it -> it.remedy.serves().stream().map(PointName::value).toList())
          .words("kind", "The class of change.", it -> it.remedy.candidate().kind())
          .list(
              "set",
              Value.words(),
              "The change as --set takes it, in this order.",
              it -> it.remedy.candidate().set())
          .byName(
              "fallsM3PerS",
              FLOW,
              "What every fall and outlet gets then.",
              it -> it.remedy.fallsM3PerS(),
              PointName::value)
          .numberOrNull("powerW", POWER, "Drawn by all pumps then.", it -> it.remedy.powerW())
          .truth(
              "mends",
              "Whether every need of \"for\" is met, targets from 100 to 125 %, and none is lost"
                  + " that was met before.",
              it -> it.remedy.mends())
          .list(
              "leaves", NEED, "What is in need with it, or by it alone.", it -> it.remedy.leaves())
          .list(
              "rooms",
              ROOM,
              "How much ponds may fall while it runs then; empty where that was not asked.",
              it -> it.remedy.rooms())
          .numberOrNull(
              "price",
              MONEY,
              "Of what is bought, with the trench where one is dug; null if a price is missing.",
              it -> it.remedy.candidate().price())
          .numberOrNull("costPerYear", MONEY, "Of electricity then.", it -> it.remedy.costPerYear())
          .member(
              "effort",
              Value.oneOf(Arrays.stream(Work.values()).map(Work::word).toList()),
              "What has to be done.",
              it -> it.remedy.candidate().work().word())
          .words(
              "words",
              "For people.",
              it -> RemedyWords.of(it.remedy.candidate(), it.network, it.units));

  private static final Shape<Bound> BOUND =
      Shape.<Bound>of()
          .member(
              "kind",
              Value.oneOf(Arrays.stream(Bound.Kind.values()).map(Bound.Kind::word).toList()),
              "The class of change.",
              bound -> bound.kind().word())
          .byName(
              "fallsM3PerS",
              FLOW,
              "The most that each fall with a target can get by it, each by itself.",
              Bound::fallsM3PerS,
              PointName::value)
          .truth(
              "enough", "Whether that is enough for every fall that lacks water.", Bound::enough);

  private static final Shape<Searched> SEARCH =
      Shape.<Searched>of()
          .list(
              "set",
              Value.words(),
              "The least set that meets every target, as --set takes it; empty if none does.",
              it -> it.least().map(remedy -> remedy.candidate().set()).orElse(List.of()))
          .truth(
              "byCost",
              "Whether it is the least by cost over the years; else by new pipe laid, a new"
                  + " pump counted as 10 m of it.",
              Searched::byCost)
          .number("sets", NUMBER.from(0), "Sets of sizes and pumps that there are.", Searched::sets)
          .number(
              "tried", NUMBER.from(0), "Of these put into the file and balanced.", Searched::tried)
          .number(
              "unpriced",
              NUMBER.from(0),
              "Sizes and pumps that were left out because they have no price.",
              Searched::unpriced)
          .truth(
              "provenLeast",
              "Whether each other set was tried, or is no less, or cannot do it by a bound.",
              Searched::proven);

  static final Shape<MendAnswer> SHAPE =
      Estimate.<MendAnswer>answer("mend", "Changes that were tried, and what each would bring.")
          .words("title", Meaning.TITLE, MendAnswer::title)
          .list("changed", Value.words(), Meaning.CHANGED, MendAnswer::changes)
          .list("needs", NEED, "What does not do what it should.", MendAnswer::needs)
          .list(
              "rooms",
              ROOM,
              "How much ponds may fall while it runs as it stands.",
              MendAnswer::rooms)
          .member("running", RunningJson.SHAPE, Meaning.RUNNING, MendAnswer::takes)
          .list(
              "remedies",
              REMEDY,
              "The best first: those that mend before others.",
              it ->
                  it.remedies().stream()
                      .map(remedy -> new Listed(remedy, it.state().network(), Shown.of(it)))
                      .toList())
          .orNull(
              "search",
              SEARCH,
              "For the least set of changes together; null where one change meets every need.",
              MendAnswer::searched)
          .number(
              "untried",
              NUMBER.from(0),
              "Changes that were left out because the job is large; 0 if all were tried.",
              MendAnswer::untried)
          .list("bounds", BOUND, "What classes of change cannot exceed.", MendAnswer::bounds)
          .list(
              "withoutBounds",
              Value.words(),
              "Falls that lack water and for which no bound can be given.",
              it -> it.unbounded().stream().map(PointName::value).toList())
          .numberOrNull(
              "dutyFlowM3PerS",
              FLOW,
              "Flow that a pump must make for all targets, the others throttled; null if none is"
                  + " known to do.",
              it -> duty(it, true))
          .numberOrNull(
              "dutyHeadM",
              METRES,
              "Head that it must make at that flow, in the hardest condition.",
              it -> duty(it, false))
          .number("years", NUMBER.above(0), Meaning.YEARS, MendAnswer::years)
          .orNull("currency", Value.words(), Meaning.CURRENCY, MendAnswer::currency)
          .including(CasesJson.JUDGING, MendAnswer::conditions);

  private MendJson() {}

  /** The JSON text. */
  public static String of(MendAnswer answer) {
    return Json.text(SHAPE, answer);
  }

  private static OptionalDouble duty(MendAnswer answer, boolean flow) {
    return answer.duty().flatMap(duty -> duty.duty().throttled()).stream()
        .mapToDouble(duty -> flow ? duty.flowM3PerS() : duty.headM())
        .findFirst();
  }
}
