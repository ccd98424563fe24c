package rillwright.cli.report.text.balance;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import rillwright.cli.report.balance.BalanceRemarks;
import rillwright.cli.report.balance.SharingWords;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.RunningCost;
import rillwright.cli.report.text.SiteCautions;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.balance.BalanceAnswer;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.PointState;
import rillwright.solver.study.valvesetting.Interplay;
import rillwright.solver.study.valvesetting.SetValve;
import rillwright.solver.study.valvesetting.SetValve.Role;
import rillwright.solver.study.valvesetting.ValveSettings;

/** Valve settings for people. */
public final class BalanceText {
  private static final String NONE = "none";

  private final BalanceAnswer answer;
  private final ValveSettings settings;
  private final ShownUnits units;
  private final PageBuilder page;

  private BalanceText(BalanceAnswer answer, PageBuilder page) {
    this.answer = answer;
    this.settings = answer.settings();
    this.units = Shown.of(answer);
    this.page = page;
  }

  /** The page. */
  public static Page of(BalanceAnswer answer) {
    return new BalanceText(answer, ChangedWords.page(answer.title(), answer.changes())).print();
  }

  /** How the valves are to be set, and in which order, on another page. */
  public static void settings(BalanceAnswer answer, PageBuilder page) {
    BalanceText text = new BalanceText(answer, page);
    page.table(text.valves());
    if (text.settings.targetFraction() > 0) {
      text.shared();
      text.howToSet();
    }
  }

  private Page print() {
    SharingWords.tooMuch(answer)
        .ifPresent(
            words -> {
              page.space();
              page.marked("! ", words);
            });
    page.table(valves());
    page.table(falls());
    RunningCost.print(answer.takes(), units, page);
    page.heading("WARNINGS AND NOTES");
    BalanceRemarks.of(answer).forEach(remark -> page.marked("! ", remark.message(units)));
    if (settings.targetFraction() > 0) {
      shared();
      howToSet();
    }
    page.marked(
        "- ",
        settings.state().network().isPumped()
            ? "Electricity and water: switch the pump off and unplug it before hands go into water."
                + " Never shut all lines while it runs, but for the ten seconds of a gauge test."
            : SiteCautions.UPHILL);
    return page.build();
  }

  private TableBuilder valves() {
    TableBuilder table =
        new TableBuilder("SET IN THIS ORDER")
            .column("valve", Side.LEFT)
            .column("handle from open", Side.RIGHT)
            .column("open", Side.RIGHT)
            .column("flow cut by " + slopeStep(), Side.RIGHT)
            .column("", Side.LEFT);
    Set<SetValve> ordered = new LinkedHashSet<>(settings.listThrottled());
    ordered.addAll(settings.valves());
    for (SetValve set : ordered) {
      Valve.Setpoint loss = set.valve().loss();
      table.row(
          set.place().line().value(),
          set.valve().label(),
          handle(loss, set.role()),
          shown(loss.opening(), units::share),
          shown(slope(set), this::slope),
          loss.isShut() ? "shut it" : words(set.role()));
    }
    return table;
  }

  /** Degrees where a handle turns so, else how far it is open. */
  private String handle(Valve.Setpoint loss, Role role) {
    return loss.degreesFromOpen().isPresent()
        ? Math.round(loss.degreesFromOpen().getAsDouble()) + "°"
        : loss.opening().isPresent()
            ? units.share(loss.opening().getAsDouble()) + " open"
            : role == Role.THROTTLED ? "see the notes" : NONE;
  }

  private static OptionalDouble slope(SetValve set) {
    return set.sensitivityM3PerSPerDegree().isPresent()
        ? set.sensitivityM3PerSPerDegree()
        : set.sensitivityM3PerSPerPercent();
  }

  /** By how much further a valve is closed. */
  private String slopeStep() {
    List<SetValve> known =
        settings.valves().stream().filter(set -> slope(set).isPresent()).toList();
    boolean degrees = known.stream().anyMatch(it -> it.sensitivityM3PerSPerDegree().isPresent());
    boolean percents = known.stream().anyMatch(it -> it.sensitivityM3PerSPerDegree().isEmpty());
    return percents ? degrees ? "1° or 1 %" : "1 %" : "1°";
  }

  private String slope(double sensitivity) {
    String flow = units.flow(sensitivity);
    return flow.equals(units.flow(0)) ? "nothing" : flow;
  }

  private static String shown(OptionalDouble number, DoubleFunction<String> words) {
    return number.isPresent() ? words.apply(number.getAsDouble()) : NONE;
  }

  private static String words(Role role) {
    return switch (role) {
      case THROTTLED -> "set here";
      case WIDE_OPEN -> "wide open";
      case TOO_COARSE -> "nearly shut, still too open";
      case LEFT_ALONE -> "leave as it is";
    };
  }

  private TableBuilder falls() {
    TableBuilder table =
        new TableBuilder("FALLS")
            .column("target", Side.RIGHT)
            .column("all wide open", Side.RIGHT)
            .column("of target", Side.RIGHT)
            .column("valves set", Side.RIGHT)
            .column("of target", Side.RIGHT);
    for (PointState state : settings.listWaysOut()) {
      double open = settings.wideOpen().point(state.point().name()).outflowM3PerS();
      OptionalDouble target = state.point().targetM3PerS();
      table.row(
          state.point().name().value(),
          shown(target, units::writtenFlow),
          flow(open),
          share(open, target),
          flow(state.outflowM3PerS()),
          share(state.outflowM3PerS(), target));
    }
    return table;
  }

  private String flow(double flowM3PerS) {
    return flowM3PerS == 0 ? "dry" : units.flow(flowM3PerS);
  }

  private String share(double flow, OptionalDouble target) {
    return target.orElse(0) > 0 ? units.share(flow / target.getAsDouble()) : NONE;
  }

  private void shared() {
    page.paragraph(SharingWords.of(answer));
  }

  private void howToSet() {
    List<SetValve> throttled = settings.listThrottled();
    if (throttled.isEmpty()) {
      return;
    }
    String lines =
        throttled.stream()
            .map(set -> "\"" + set.place().line().value() + "\"")
            .collect(Collectors.joining(", then "));
    page.paragraph(
        "\"Flow cut by "
            + slopeStep()
            + "\": how much less its line carries if the valve is closed that much further. Open"
            + " all"
            + " of these valves wide, "
            + (settings.state().network().isPumped() ? "start the pump" : "let the water run")
            + ", then set "
            + lines
            + ". Handles are rarely accurate to a few degrees: time a bucket at each fall (fix"
            + " its gutter with the water off) and correct."
            + (Interplay.isIn(settings)
                ? throttled.size() == 1
                    ? " Closing it raises the other falls: time all of them again and correct; then"
                        + " mark the handle."
                    : " Closing one valve raises the other falls, so go round twice; then mark the"
                        + " handles."
                : " Each fall has its own line, so the order does not matter; then mark the"
                    + " handles."));
  }
}
