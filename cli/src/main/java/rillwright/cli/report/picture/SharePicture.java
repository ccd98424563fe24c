package rillwright.cli.report.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.balance.BalanceAnswer;
import rillwright.cli.study.balance.ValveSweeps;
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
  public static PanelChart of(BalanceAnswer answer, ValveSweeps sweeps) {
    ValveSettings settings = answer.settings();
    List<Panel> panels =
        sweeps.sweeps().stream()
            .limit(MOST_PANELS)
            .map(sweep -> panel(settings, sweep, Shown.of(answer)))
            .toList();
    String caption =
        "What each fall gets while one valve is moved and the others stay as they are set; the"
            + " marks are the setting."
            + leftOut(sweeps, panels.size());
    String changed =
        answer.changes().isEmpty() ? "" : " Changed: " + String.join("; ", answer.changes()) + ".";
    return new PanelChart(answer.title(), caption + changed, panels.size() > 1 ? 2 : 1, panels);
  }

  /** " Moved: the first 24 of 60 valves. Drawn: the first 6 of 20 that change a share." */
  private static String leftOut(ValveSweeps sweeps, int panels) {
    int telling = sweeps.sweeps().size();
    return (sweeps.moved() < sweeps.movable()
            ? " Moved: the first " + sweeps.moved() + " of " + sweeps.movable() + " valves."
            : "")
        + (panels < telling
            ? " Drawn: the first " + panels + " of " + telling + " that change a share."
            : "");
  }

  private static Panel panel(ValveSettings settings, ValveSweep sweep, ShownUnits units) {
    SetValve set = sweep.valve();
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
            .map(fall -> new Panel.Spot(place(sweep), PERCENT * shareOf(settings, fall)))
            .toList();
    Panel.Mark target = new Panel.Mark(PERCENT, "the target");
    Panel.Mark setting =
        new Panel.Mark(
            place(sweep),
            setting(set, units) + ": " + units.share(settings.targetFraction()) + " of the target");
    return new Panel(
        across(set),
        "Of the target, %",
        curves.entrySet().stream()
            .map(curve -> new Panel.Curve(curve.getKey().value(), rising(curve.getValue())))
            .toList(),
        List.of(target),
        List.of(setting),
        spots);
  }

  private static List<Panel.Spot> rising(List<Panel.Spot> spots) {
    return spots.stream().sorted(Comparator.comparingDouble(Panel.Spot::across)).toList();
  }

  private static double shareOf(ValveSettings settings, PointName fall) {
    return settings.state().point(fall).outflowM3PerS()
        / settings.state().point(fall).point().targetM3PerS().orElseThrow();
  }

  /** Where the valve is set; of one that is to be shut, the end towards shut. */
  private static double place(ValveSweep sweep) {
    Valve.Setpoint loss = sweep.valve().valve().loss();
    return place(loss.isShut() ? sweep.steps().get(sweep.steps().size() - 1).loss() : loss);
  }

  private static double place(Valve.Setpoint loss) {
    return loss.degreesFromOpen()
        .orElseGet(
            () ->
                loss.opening().isPresent()
                    ? PERCENT * loss.opening().getAsDouble()
                    : loss.lossCoefficient());
  }

  private static String across(SetValve set) {
    Valve.Setpoint loss = set.valve().loss();
    String valve = set.valve().label() + " in \"" + set.place().line().value() + "\", ";
    return valve
        + (loss.degreesFromOpen().isPresent()
            ? "handle from open, degrees"
            : loss.opening().isPresent() ? "open, %" : "loss coefficient K");
  }

  private static String setting(SetValve set, ShownUnits units) {
    Valve.Setpoint loss = set.valve().loss();
    return loss.degreesFromOpen().isPresent()
        ? Math.round(loss.degreesFromOpen().getAsDouble()) + "°"
        : loss.opening().isPresent()
            ? units.share(loss.opening().getAsDouble()) + " open"
            : set.valve().isShut() ? "shut" : "K " + units.computed(loss.lossCoefficient());
  }
}
