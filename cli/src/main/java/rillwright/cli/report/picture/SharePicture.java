package rillwright.cli.report.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.cli.report.balance.BalanceAnswer;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.chart.content.Panel;
import rillwright.curves.chart.content.PanelChart;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Valve;
import rillwright.solver.study.valvesetting.SetValve;
import rillwright.solver.study.valvesetting.ValveSettings;
import rillwright.solver.study.valvesetting.ValveSweep;

/** The picture of what every fall gets while one valve after the other is moved. */
public final class SharePicture {
  private static final int MOST_PANELS = 6;
  private static final double PERCENT = 100;

  private SharePicture() {}

  /** What is to be drawn. */
  public static PanelChart of(BalanceAnswer answer) {
    ValveSettings settings = answer.settings();
    List<SetValve> moved = new ArrayList<>(settings.listThrottled());
    if (moved.isEmpty()) {
      moved.add(settings.valves().get(0));
    }
    List<Panel> panels =
        moved.stream().limit(MOST_PANELS).map(set -> panel(settings, set, answer.units())).toList();
    String caption =
        "What each fall gets while one valve is moved and the others stay as they are set; the"
            + " marks are the setting.";
    String changed =
        answer.changes().isEmpty() ? "" : " Changed: " + String.join("; ", answer.changes()) + ".";
    return new PanelChart(answer.title(), caption + changed, panels.size() > 1 ? 2 : 1, panels);
  }

  private static Panel panel(ValveSettings settings, SetValve set, ShownUnits units) {
    ValveSweep sweep = ValveSweep.of(settings, set);
    Map<PointName, List<Panel.Spot>> curves = new LinkedHashMap<>();
    for (ValveSweep.Step step : sweep.steps()) {
      step.shares()
          .forEach(
              (fall, share) ->
                  curves
                      .computeIfAbsent(fall, name -> new ArrayList<>())
                      .add(new Panel.Spot(place(step.loss()), PERCENT * share)));
    }
    List<Panel.Spot> spots =
        curves.keySet().stream()
            .map(
                fall ->
                    new Panel.Spot(place(set.valve().loss()), PERCENT * shareOf(settings, fall)))
            .toList();
    Panel.Mark wish = new Panel.Mark(PERCENT, "the wish");
    Panel.Mark setting =
        new Panel.Mark(
            place(set.valve().loss()),
            setting(set, units) + ": " + units.share(settings.share()) + " of the wish");
    return new Panel(
        across(set),
        "Of the wish, %",
        curves.entrySet().stream()
            .map(curve -> new Panel.Curve(curve.getKey().value(), curve.getValue()))
            .toList(),
        List.of(wish),
        List.of(setting),
        spots);
  }

  private static double shareOf(ValveSettings settings, PointName fall) {
    return settings.state().point(fall).outflowM3PerS()
        / settings.state().point(fall).point().wantM3PerS().orElseThrow();
  }

  private static double place(Valve.Setpoint loss) {
    return loss.degreesFromOpen()
        .orElseGet(
            () ->
                loss.openShare().isPresent()
                    ? PERCENT * (1 - loss.openShare().getAsDouble())
                    : loss.lossCoefficient());
  }

  private static String across(SetValve set) {
    Valve.Setpoint loss = set.valve().loss();
    String valve = set.valve().label() + " in \"" + set.place().line().value() + "\", ";
    return valve
        + (loss.degreesFromOpen().isPresent()
            ? "handle from open, degrees"
            : loss.openShare().isPresent() ? "closed, %" : "loss coefficient K");
  }

  private static String setting(SetValve set, ShownUnits units) {
    Valve.Setpoint loss = set.valve().loss();
    return loss.degreesFromOpen().isPresent()
        ? Math.round(loss.degreesFromOpen().getAsDouble()) + "°"
        : loss.openShare().isPresent()
            ? units.share(1 - loss.openShare().getAsDouble()) + " closed"
            : "K " + units.number(loss.lossCoefficient());
  }
}
