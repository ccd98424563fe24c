package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.ENERGY;
import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.MONEY;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.POWER;

import java.util.Optional;
import rillwright.cli.json.Json;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.study.duty.DutyAnswer;
import rillwright.cli.study.duty.DutyRunning;
import rillwright.curves.sheet.fact.Price;
import rillwright.solver.network.PointName;
import rillwright.solver.study.duty.Duty;

/**
 * A duty for programs.
 *
 * @param whole whether it is an answer of its own and no part of another
 */
public record DutyJson(DutyAnswer answer, boolean whole) {
  private static final Shape<Duty.Throttled> THROTTLED =
      Shape.<Duty.Throttled>of()
          .number("flowM3PerS", FLOW.from(0), "Flow of the pump.", Duty.Throttled::flowM3PerS)
          .number("headM", METRES, "Head that it must make.", Duty.Throttled::headM);

  private static final Shape<Duty.AsTheyStand> AS_THEY_STAND =
      Shape.<Duty.AsTheyStand>of()
          .number("flowM3PerS", FLOW.from(0), "Flow of the pump.", Duty.AsTheyStand::flowM3PerS)
          .number("headM", METRES, "Head that it must make.", Duty.AsTheyStand::headM)
          .byName(
              "fallsM3PerS",
              FLOW,
              "What each fall and outlet with a target gets, by name.",
              Duty.AsTheyStand::fallsM3PerS,
              PointName::value);

  private static final Shape<DutyRunning> RUNNING =
      Shape.<DutyRunning>of()
          .number(
              "waterPowerW",
              POWER,
              "Flow times head, with the others throttled.",
              DutyRunning::waterPowerW)
          .number(
              "leastPowerW",
              POWER,
              "From the wire, with a good pump for such a duty (common practice).",
              it -> it.powerW(it.goodWireToWater()))
          .number(
              "greatestPowerW",
              POWER,
              "From the wire, with a poor pump for such a duty (common practice).",
              it -> it.powerW(it.poorWireToWater()))
          .number(
              "leastEnergyKwhPerYear",
              ENERGY,
              "Of a year with a good pump.",
              it -> it.energyKwhPerYear(it.goodWireToWater()))
          .number(
              "greatestEnergyKwhPerYear",
              ENERGY,
              "Of a year with a poor pump.",
              it -> it.energyKwhPerYear(it.poorWireToWater()))
          .numberOrNull(
              "leastCostPerYear",
              MONEY,
              "Of the least energy; null without a price.",
              it -> it.costPerYear(it.goodWireToWater()))
          .numberOrNull(
              "greatestCostPerYear",
              MONEY,
              "Of the greatest energy; null without a price.",
              it -> it.costPerYear(it.poorWireToWater()))
          .orNull(
              "currency",
              Value.words(),
              "Of these costs.",
              it -> it.running().price().map(Price::currency))
          .each(
              "turnoversPerDay",
              NUMBER.from(0),
              "How often the water of the basin that feeds the pump is pumped round at that flow,"
                  + " by name, where its volume is known.",
              it -> it.turnover().stream().toList(),
              turnover -> turnover.basin().value(),
              turnover -> turnover.perDay());

  static final Shape<DutyJson> SHAPE =
      Estimate.<DutyJson>answer("duty", "Flow and head that the pump must make.")
          .words("title", Meaning.TITLE, it -> it.answer.title())
          .words(
              "line", "The line that the pump stands in.", it -> it.answer.place().line().value())
          .orNull(
              "asTheyStand",
              AS_THEY_STAND,
              "With the valves as they stand: least flow at which every fall gets at least its"
                  + " target; null if none does.",
              it -> it.duty().asTheyStand())
          .orNull(
              "throttled",
              THROTTLED,
              "With the others throttled: each gets its target, at the head of the governing one.",
              it -> it.duty().throttled())
          .orNull(
              "governing",
              Value.words(),
              "The fall that decides the head.",
              it -> it.duty().governing().map(PointName::value))
          .orNull(
              "greatestFlowM3PerS",
              FLOW,
              "The greatest flow that the pump could draw, where that is less than the falls need.",
              it -> it.duty().greatestFlowM3PerS())
          .orNull(
              "leastShutOffM",
              METRES,
              "Head at no flow that the pump must exceed so that its water comes over the high"
                  + " points on its way; null without one.",
              it -> it.duty().leastShutOff().map(least -> least.headM()))
          .ifAny(
              "running",
              Value.orNull(RUNNING),
              "What the duty will take to run, whatever pump makes it; null if it is out of reach.",
              it -> it.ifWhole(DutyRunning.of(it.answer)))
          .ifAny(
              "changed",
              Value.list(Value.words()),
              Meaning.CHANGED,
              it -> it.ifWhole(it.answer.changes()));

  /** The JSON text. */
  public static String of(DutyAnswer answer) {
    return Json.text(SHAPE, new DutyJson(answer, true));
  }

  /** A duty that is part of another answer. */
  static DutyJson within(DutyAnswer answer) {
    return new DutyJson(answer, false);
  }

  private Duty duty() {
    return answer.duty();
  }

  private <T> Optional<T> ifWhole(T value) {
    return whole ? Optional.of(value) : Optional.empty();
  }
}
