package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.SECONDS;
import static rillwright.cli.json.Quantity.SPEED;
import static rillwright.cli.json.Quantity.VOLUME;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.json.Json;
import rillwright.cli.json.Quantity;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.stream.StreamAnswer;
import rillwright.solver.network.PointName;
import rillwright.solver.stream.FirstFill;
import rillwright.solver.stream.ItemState;
import rillwright.solver.stream.LevelBudget;
import rillwright.solver.stream.StarveLevel;
import rillwright.solver.stream.StreamState;
import rillwright.solver.stream.Transit;
import rillwright.solver.stream.time.TimeCourse;

/**
 * Streams and levels for programs.
 *
 * @param whole whether it is an answer of its own and no part of another
 */
public record StreamJson(StreamAnswer answer, boolean whole) {
  private static final Quantity DEPTH = METRES.from(0);

  private static final Shape<ItemState> ITEM =
      Shape.<ItemState>named("streamItem", "A reach, a pool or a step.")
          .member(
              "kind",
              Value.oneOf("reach", "pool", "step"),
              "Which of the three.",
              item -> item.item().kind())
          .number(
              "depthM",
              DEPTH,
              "Normal depth of a reach; of a pool with the head over its crest; critical depth at a"
                  + " step.",
              ItemState::depthM)
          .numberOrNull("velocityMPerS", SPEED.from(0), "Mean speed.", ItemState::velocityMPerS)
          .numberOrNull(
              "surfaceWidthM", DEPTH, "Width of the water's surface.", ItemState::surfaceWidthM)
          .numberOrNull(
              "froude", NUMBER.from(0), "Froude number; null without flow.", ItemState::froude)
          .numberOrNull(
              "criticalDepthM", DEPTH, "Critical depth of the section.", ItemState::criticalDepthM)
          .numberOrNull("crestHeadM", DEPTH, "Pool: head over its crest.", ItemState::crestHeadM)
          .number(
              "volumeM3",
              VOLUME,
              "Water in transit without gravel: of a pool what stands above its crest.",
              ItemState::volumeM3)
          .number(
              "leastVolumeM3", VOLUME, "The least that it may well be.", ItemState::leastVolumeM3)
          .number("mostVolumeM3", VOLUME, "The most that it may well be.", ItemState::mostVolumeM3)
          .number("gravelM3", VOLUME, "Water in its gravel that drains.", ItemState::gravelM3);

  private static final Shape<StreamState> STREAM =
      Shape.<StreamState>of()
          .number("flowM3PerS", FLOW.from(0), "Flow that enters it.", StreamState::flowM3PerS)
          .list(
              "reaches",
              ITEM,
              "One for each entry of the file, in order; null where it does not apply.",
              StreamState::items)
          .number(
              "inTransitM3",
              VOLUME,
              "Reaches, drainable water in their gravel, and pools above their crests.",
              stream -> stream.transit().totalM3());

  private static final Shape<Transit> TRANSIT =
      Shape.<Transit>of()
          .number("streamsM3", VOLUME, "In the reaches.", Transit::streamsM3)
          .number("gravelM3", VOLUME, "In gravel, what of it drains.", Transit::gravelM3)
          .number("poolsM3", VOLUME, "Above the crests of pools.", Transit::poolsM3)
          .number("boxesM3", VOLUME, "Above the crests of falls' boxes.", Transit::boxesM3)
          .number("filtersM3", VOLUME, "In filters that drain.", Transit::filtersM3)
          .number("pipesM3", VOLUME, "In pipes that drain.", Transit::pipesM3);

  private static final Shape<Map.Entry<FirstFill.Item, Double>> FILLED =
      Shape.<Map.Entry<FirstFill.Item, Double>>of()
          .member(
              "item",
              Value.oneOf(Arrays.stream(FirstFill.Item.values()).map(StreamJson::word).toList()),
              "Water in transit; pools below their crests; water in gravel that does not drain;"
                  + " pipes that stay full; boxes below their crests; chambers from the basin's"
                  + " level at rest to theirs.",
              entry -> word(entry.getKey()))
          .number(
              "volumeM3",
              Quantity.of("m3"),
              "Negative where a chamber falls.",
              Map.Entry::getValue);

  private static final Shape<LevelBudget> BASIN =
      Shape.<LevelBudget>of()
          .number(
              "restLevelM",
              METRES,
              "Level with the pump off and the pools full.",
              LevelBudget::restLevelM)
          .numberOrNull(
              "runningLevelM",
              METRES,
              "Level once the stream has filled, nothing topped up; null if its area is not known.",
              LevelBudget::runningLevelM)
          .numberOrNull(
              "stoppedLevelM",
              METRES,
              "Level after a stop when it was topped up while running, before anything runs over.",
              LevelBudget::stoppedLevelM)
          .number(
              "firstFillM3",
              VOLUME,
              "Water that the first day takes besides what fills it to its level: the sum of"
                  + " firstFill.",
              LevelBudget::firstFillM3)
          .list(
              "firstFill",
              FILLED,
              "What is in that, item by item.",
              budget -> List.copyOf(budget.firstFill().volumeM3().entrySet()))
          .numberOrNull(
              "daysToStarve",
              NUMBER.from(0),
              "Days of evaporation and splash until the skimmer cannot pass what runs, or the pump"
                  + " draws air; null if that is not known.",
              LevelBudget::daysToStarve)
          .numberOrNull(
              "starveLevelM", METRES, "Level at which that is so.", LevelBudget::starveLevelM)
          .numberOrNull(
              "starveCoverM",
              DEPTH,
              "Depth over its inlet that a pump needs and has not below that level; null where that"
                  + " is not what starves it.",
              it ->
                  it.starve().stream()
                      .mapToDouble(StarveLevel::coverM)
                      .filter(cover -> cover > 0)
                      .findFirst())
          .numberOrNull(
              "starveLowerM",
              DEPTH,
              "By how much the water at that pump stands below this; null where no pump's inlet"
                  + " starves it.",
              it ->
                  it.starve().stream()
                      .filter(StarveLevel::drawsAir)
                      .mapToDouble(StarveLevel::lowerM)
                      .findFirst())
          .numberOrNull(
              "lossMPerDay",
              DEPTH,
              "By how much the level falls in a day by evaporation and splash.",
              LevelBudget::lossMPerDay)
          .numberOrNull(
              "overflowM",
              METRES,
              "Level at which it runs over: what the file says, else the top of its skimmer's"
                  + " mouth.",
              LevelBudget::overflowM)
          .number("runsOverM3", VOLUME, "What runs over at such a stop.", LevelBudget::runsOverM3);

  private static final Shape<TimeCourse.Moment> MOMENT =
      Shape.<TimeCourse.Moment>of()
          .number("timeS", SECONDS, "After switch-on.", TimeCourse.Moment::timeS)
          .truth("pumping", "Whether the pump is on.", TimeCourse.Moment::pumping)
          .byName("levelM", METRES, "Levels.", TimeCourse.Moment::levelM, PointName::value)
          .byName(
              "flowM3PerS",
              FLOW,
              "Flows out of the network.",
              TimeCourse.Moment::flowM3PerS,
              PointName::value)
          .member(
              "returnFlowM3PerS",
              Value.byName(FLOW),
              "Flows at the ends of streams.",
              TimeCourse.Moment::returnFlowM3PerS)
          .member(
              "poolHeadM",
              Value.byName(METRES),
              "Heads over the crests of pools.",
              TimeCourse.Moment::poolHeadM);

  private static final Shape<TimeCourse.GivenUp> GIVEN_UP =
      Shape.<TimeCourse.GivenUp>of()
          .number("timeS", SECONDS, "How far they are followed, after switch-on.", it -> it.timeS())
          .words(
              "point",
              "The basin, chamber or fall's box with the least surface: the fastest.",
              it -> it.water().value());

  private static final Shape<TimeCourse> COURSE =
      Shape.<TimeCourse>named("course", "Start and stop in time.")
          .orNull(
              "givenUp",
              GIVEN_UP,
              "Where levels change too fast to be followed to the end; null where they do not.",
              TimeCourse::givenUp)
          .numberOrNull(
              "stopsAtS",
              SECONDS,
              "When all is steady and the pump stops; null if it is not followed so far.",
              course ->
                  course.reachesSteady()
                      ? OptionalDouble.of(course.stopsAtS())
                      : OptionalDouble.empty())
          .numberOrNull(
              "firstReturnS",
              SECONDS,
              "When the first stream brings home a tenth of what it will.",
              TimeCourse::firstReturnS)
          .number(
              "ranOverM3",
              VOLUME,
              "What overflowed from ponds and chambers.",
              TimeCourse::ranOverM3)
          .number(
              "volumeM3",
              Quantity.of("m3"),
              "All water, from the levels by geometry.",
              TimeCourse::volumeM3)
          .number(
              "volumeErrorM3",
              VOLUME,
              "By how much that strays at most.",
              TimeCourse::volumeErrorM3)
          .list("moments", MOMENT, "In order of time.", TimeCourse::moments);

  static final Shape<StreamJson> SHAPE =
      Estimate.<StreamJson>answer(
              "stream", "Depth and speed in each reach, water in transit, levels of basins.")
          .words("title", Meaning.TITLE, it -> it.answer.title())
          .list("changed", Value.words(), Meaning.CHANGED, it -> it.answer.changes())
          .each(
              "streams",
              STREAM,
              "By name, once filled and nothing topped up.",
              it -> it.answer.budget().running().streams(),
              stream -> stream.stream().name())
          .member(
              "transit",
              TRANSIT,
              "Water that comes back when the pump stops, item by item.",
              it -> it.answer.budget().running().transit())
          .each(
              "basins",
              BASIN,
              "By name.",
              it -> it.answer.budget().basins(),
              budget -> budget.basin().name().value())
          .orNull(
              "running", RunningJson.SHAPE, Meaning.RUNNING, it -> it.ifWhole(it.answer.takes()))
          .orNull(
              "course",
              COURSE,
              "Start and stop in time; null unless asked for.",
              it -> it.ifWhole(it.answer).flatMap(StreamAnswer::course))
          .list(
              "findings",
              FoundJson.SHAPE,
              Meaning.FINDINGS,
              it -> FoundJson.list(it.answer.budget().findings(), Shown.of(it.answer)));

  /** The JSON text. */
  public static String of(StreamAnswer answer) {
    return Json.text(SHAPE, new StreamJson(answer, true));
  }

  private static String word(FirstFill.Item item) {
    return item.name().toLowerCase(Locale.ROOT);
  }

  private <T> Optional<T> ifWhole(T value) {
    return whole ? Optional.of(value) : Optional.empty();
  }
}
