package rillwright.cli.report.json;

import java.util.Map;
import java.util.Optional;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.stream.StreamAnswer;
import rillwright.solver.network.PointName;
import rillwright.solver.stream.ItemState;
import rillwright.solver.stream.LevelBudget;
import rillwright.solver.stream.StreamBudget;
import rillwright.solver.stream.StreamState;
import rillwright.solver.stream.Transit;
import rillwright.solver.stream.time.TimeCourse;

/** Streams and levels for programs. */
public final class StreamJson {
  private final Json json;

  private StreamJson(Json json) {
    this.json = json;
  }

  /** The JSON text. */
  public static String of(StreamAnswer answer) {
    return Json.object(
        json -> new StreamJson(json).write(answer, Optional.of(answer.takes()), answer.course()));
  }

  /** The members of an answer in one of several conditions. */
  static void writeInCondition(Json json, StreamAnswer answer) {
    new StreamJson(json).write(answer, Optional.empty(), Optional.empty());
  }

  private void write(
      StreamAnswer answer, Optional<RunningFigures> takes, Optional<TimeCourse> course) {
    StreamBudget budget = answer.budget();
    json.words("title", answer.title());
    ChangedField.write(json, answer.changes());
    json.object("streams", () -> budget.running().streams().forEach(this::stream));
    json.object("transit", () -> transit(budget.running().transit()));
    json.object("basins", () -> budget.basins().forEach(this::basin));
    new RunningFields(json).write(takes);
    json.objectOrNull("course", course, this::course);
    FindingFields.write(json, budget.findings(), Shown.of(answer));
  }

  private void stream(StreamState state) {
    json.object(
        state.stream().name(),
        () -> {
          json.number("flowM3PerS", state.flowM3PerS());
          json.array("reaches", () -> state.items().forEach(item -> json.object(() -> item(item))));
          json.number("inTransitM3", state.transit().totalM3());
        });
  }

  private void item(ItemState item) {
    json.words("kind", item.item().kind());
    json.number("depthM", item.depthM());
    json.number("velocityMPerS", item.velocityMPerS());
    json.number("surfaceWidthM", item.surfaceWidthM());
    json.number("froude", item.froude());
    json.number("criticalDepthM", item.criticalDepthM());
    json.number("crestHeadM", item.crestHeadM());
    json.number("volumeM3", item.volumeM3());
    json.number("leastVolumeM3", item.leastVolumeM3());
    json.number("mostVolumeM3", item.mostVolumeM3());
    json.number("gravelM3", item.gravelM3());
  }

  private void transit(Transit transit) {
    json.number("streams", transit.streamsM3());
    json.number("gravel", transit.gravelM3());
    json.number("pools", transit.poolsM3());
    json.number("boxes", transit.boxesM3());
    json.number("filters", transit.filtersM3());
    json.number("pipes", transit.pipesM3());
  }

  private void basin(LevelBudget budget) {
    json.object(
        budget.basin().name().value(),
        () -> {
          json.number("restLevelM", budget.restLevelM());
          json.number("runningLevelM", budget.runningLevelM());
          json.number("stoppedLevelM", budget.stoppedLevelM());
          json.number("firstFillM3", budget.firstFillM3());
          json.number("daysToStarve", budget.daysToStarve());
          json.number("starveLevelM", budget.starveLevelM());
          json.number("lossMPerDay", budget.lossMPerDay());
          json.number("overflowM", budget.overflowM());
          json.number("runsOverM3", budget.runsOverM3());
        });
  }

  private void course(TimeCourse course) {
    json.number("stopsAtS", course.stopsAtS());
    json.number("firstWaterHomeS", course.firstWaterHomeS());
    json.number("ranOverM3", course.ranOverM3());
    json.number("volumeM3", course.volumeM3());
    json.number("volumeErrorM3", course.volumeErrorM3());
    json.array("moments", () -> course.moments().forEach(m -> json.object(() -> moment(m))));
  }

  private void moment(TimeCourse.Moment moment) {
    json.number("timeS", moment.timeS());
    json.truth("pumping", moment.pumping());
    points("levelM", moment.levelM());
    points("flowM3PerS", moment.flowM3PerS());
    json.object("homeM3PerS", () -> moment.homeM3PerS().forEach(json::number));
    json.object("poolHeadM", () -> moment.poolHeadM().forEach(json::number));
  }

  private void points(String name, Map<PointName, Double> values) {
    json.object(name, () -> values.forEach((point, value) -> json.number(point.value(), value)));
  }
}
