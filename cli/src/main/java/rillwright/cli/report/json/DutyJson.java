package rillwright.cli.report.json;

import java.util.OptionalDouble;
import rillwright.cli.study.duty.DutyAnswer;
import rillwright.cli.study.duty.DutyRunning;
import rillwright.curves.sheet.Price;
import rillwright.solver.study.duty.Duty;

/** A duty for programs. */
public final class DutyJson {
  private DutyJson() {}

  /** The JSON text. */
  public static String of(DutyAnswer answer) {
    return Json.object(
        json -> {
          write(json, answer);
          json.objectOrNull(
              "running", DutyRunning.of(answer), (DutyRunning takes) -> running(json, takes));
          ChangedField.write(json, answer.changes());
        });
  }

  private static void running(Json json, DutyRunning takes) {
    double good = takes.goodWireToWater();
    double poor = takes.poorWireToWater();
    json.number("waterPowerW", takes.waterPowerW());
    json.number("leastPowerW", takes.powerW(good));
    json.number("greatestPowerW", takes.powerW(poor));
    json.number("leastEnergyKwhPerYear", takes.energyKwhPerYear(good));
    json.number("greatestEnergyKwhPerYear", takes.energyKwhPerYear(poor));
    json.number("leastCostPerYear", takes.costPerYear(good));
    json.number("greatestCostPerYear", takes.costPerYear(poor));
    json.wordsOrNull("currency", takes.running().price().map(Price::currency));
    json.object(
        "turnoversPerDay",
        () ->
            takes
                .turnover()
                .ifPresent(turnover -> json.number(turnover.basin().value(), turnover.perDay())));
  }

  /** The members of a duty. */
  static void write(Json json, DutyAnswer answer) {
    Duty duty = answer.duty();
    json.words("title", answer.title());
    json.words("line", answer.place().line().value());
    json.objectOrNull("asTheyStand", duty.asTheyStand(), stand -> asTheyStand(json, stand));
    json.objectOrNull(
        "throttled",
        duty.throttled(),
        throttled -> {
          json.number("flowM3PerS", throttled.flowM3PerS());
          json.number("headM", throttled.headM());
        });
    json.wordsOrNull("governing", duty.governing().map(point -> point.value()));
    json.number(
        "greatestFlowM3PerS",
        duty.greatestFlowM3PerS().map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    json.number(
        "leastShutOffM",
        duty.leastShutOff()
            .map(least -> OptionalDouble.of(least.headM()))
            .orElse(OptionalDouble.empty()));
  }

  private static void asTheyStand(Json json, Duty.AsTheyStand stand) {
    json.number("flowM3PerS", stand.flowM3PerS());
    json.number("headM", stand.headM());
    json.object(
        "fallsM3PerS",
        () -> stand.fallsM3PerS().forEach((fall, flow) -> json.number(fall.value(), flow)));
  }
}
