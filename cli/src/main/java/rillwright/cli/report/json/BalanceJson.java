package rillwright.cli.report.json;

import rillwright.cli.report.balance.BalanceRemarks;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.balance.BalanceAnswer;
import rillwright.solver.network.Network;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.PointState;
import rillwright.solver.study.valvesetting.SetValve;
import rillwright.solver.study.valvesetting.ValveSettings;

/** Valve settings for programs. */
public final class BalanceJson {
  private BalanceJson() {}

  /** The JSON text. */
  public static String of(BalanceAnswer answer) {
    return Json.object(json -> write(json, answer));
  }

  private static void write(Json json, BalanceAnswer answer) {
    ValveSettings settings = answer.settings();
    json.words("title", answer.title());
    ChangedField.write(json, answer.changes());
    json.number("share", settings.share());
    json.words("governing", settings.governing().value());
    json.object("falls", () -> settings.listWaysOut().forEach(point -> fall(json, point)));
    json.array("valves", () -> settings.valves().forEach(set -> valve(json, set, settings)));
    json.array("order", () -> settings.order().forEach(line -> json.words(line.value())));
    json.number("pumpShortM", settings.pumpShortM());
    new RunningFields(json).write(answer.takes());
    FindingFields.write(json, BalanceRemarks.of(answer), Shown.of(answer));
  }

  private static void fall(Json json, PointState state) {
    json.object(
        state.point().name().value(),
        () -> {
          json.number("flowM3PerS", state.outflowM3PerS());
          json.number("wantM3PerS", state.point().wantM3PerS());
        });
  }

  private static void valve(Json json, SetValve set, ValveSettings settings) {
    Valve.Setpoint loss = set.valve().loss();
    json.object(
        () -> {
          json.words("line", set.place().line().value());
          json.words("part", address(set, settings.state().network()));
          json.number("open", loss.openShare());
          json.number("degreesFromOpen", loss.degreesFromOpen());
          json.number("k", set.lossCoefficient());
          json.number("sensitivity", set.sensitivityM3PerSPerDegree());
        });
  }

  /** The part as {@code --set} calls it: "valve", "valve 2". */
  private static String address(SetValve set, Network network) {
    long number =
        network.line(set.place().line()).parts().stream()
            .limit(set.place().partIndex() + 1L)
            .filter(Valve.class::isInstance)
            .count();
    return number == 1 ? set.valve().kind() : set.valve().kind() + " " + number;
  }
}
