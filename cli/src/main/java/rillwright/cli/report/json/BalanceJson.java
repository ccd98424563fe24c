package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.SHARE;

import java.util.List;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.json.Json;
import rillwright.cli.json.Quantity;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.balance.BalanceRemarks;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.balance.BalanceAnswer;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.PointState;
import rillwright.solver.study.valvesetting.SetValve;

/** Valve settings for programs. */
public final class BalanceJson {
  private record Setting(SetValve set, Network network) {
    private Valve.Setpoint loss() {
      return set.valve().loss();
    }

    /** The part as {@code --set} calls it: "valve", "valve 2". */
    private String address() {
      List<Part> parts = network.line(set.place().line()).parts();
      return PartStep.stepsOf(parts.stream().map(Part::kind).toList()).get(set.place().partIndex());
    }
  }

  private static final Shape<PointState> FALL =
      Shape.<PointState>of()
          .number("flowM3PerS", FLOW, "Flow over it.", PointState::outflowM3PerS)
          .numberOrNull(
              "targetM3PerS",
              FLOW,
              "Its target; null without one.",
              fall -> fall.point().targetM3PerS());

  private static final Shape<Setting> VALVE =
      Shape.<Setting>of()
          .words("line", "The line that it stands in.", it -> it.set.place().line().value())
          .member(
              "part",
              Value.matching("^valve( [0-9]+)?$"),
              "The part, as a change calls it.",
              Setting::address)
          .numberOrNull(
              "opening",
              SHARE.from(0).upTo(1),
              "Share of the travel; null where the file gives only a loss coefficient.",
              it -> it.loss().opening())
          .numberOrNull(
              "degreesFromOpen",
              Quantity.of("degrees").from(0).upTo(90),
              "How far the handle stands from open; null where none is known to turn.",
              it -> it.loss().degreesFromOpen())
          .numberOrNull(
              "lossCoefficient",
              NUMBER.from(0),
              "K on the velocity head of its bore; null of a valve that is to be shut.",
              it -> it.set.lossCoefficient())
          .numberOrNull(
              "sensitivityM3PerSPerDegree",
              FLOW,
              "By how much less runs through it for a degree further shut; null without a handle"
                  + " that turns.",
              it -> it.set.sensitivityM3PerSPerDegree());

  static final Shape<BalanceAnswer> SHAPE =
      Estimate.<BalanceAnswer>answer(
              "balance",
              "How to set the valves so that every fall gets the same multiple of its target.")
          .words("title", Meaning.TITLE, BalanceAnswer::title)
          .list("changed", Value.words(), Meaning.CHANGED, BalanceAnswer::changes)
          .number(
              "targetFraction",
              SHARE.from(0),
              "The multiple of its target that every fall gets at least.",
              it -> it.settings().targetFraction())
          .words(
              "governing",
              "The fall that decides the fraction.",
              it -> it.settings().governing().value())
          .each(
              "falls",
              FALL,
              "By name, with the valves so set.",
              it -> it.settings().listWaysOut(),
              fall -> fall.point().name().value())
          .member(
              "valves",
              Value.someOf(VALVE),
              "In the order of the file.",
              it ->
                  it.settings().valves().stream()
                      .map(set -> new Setting(set, it.settings().state().network()))
                      .toList())
          .list(
              "order",
              Value.words(),
              "Lines of the valves, first to set first.",
              it -> it.settings().order().stream().map(LineName::value).toList())
          .numberOrNull(
              "missingHeadM",
              METRES.from(0),
              "Head that the pump lacks at the sum of the targets, all other falls held to theirs;"
                  + " 0 if it is strong enough, null if more head does not help or the search for"
                  + " it was cut short.",
              it -> it.settings().missingHeadM())
          .member("running", RunningJson.SHAPE, Meaning.RUNNING, BalanceAnswer::takes)
          .list(
              "findings",
              FoundJson.SHAPE,
              Meaning.FINDINGS,
              it -> FoundJson.list(BalanceRemarks.of(it), Shown.of(it)));

  private BalanceJson() {}

  /** The JSON text. */
  public static String of(BalanceAnswer answer) {
    return Json.text(SHAPE, answer);
  }
}
