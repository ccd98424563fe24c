package rillwright.cli.report.balance;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Valve;
import rillwright.solver.study.valvesetting.SetValve;
import rillwright.solver.study.valvesetting.SetValve.Role;
import rillwright.solver.study.valvesetting.ValveSettings;

/**
 * What the crew should know about valve settings.
 *
 * @param code short and stable
 * @param at the fall or line that it is about
 * @param message what is so and what to do about it
 */
public record BalanceRemark(String code, String at, String message) {

  /** All that there is to say, the gravest first. */
  public static List<BalanceRemark> listOf(BalanceAnswer answer) {
    List<BalanceRemark> remarks = new ArrayList<>();
    ValveSettings settings = answer.settings();
    if (settings.pumpShortM().orElse(1) > 0) {
      remarks.add(tooWeak(settings, answer.units()));
    }
    settings.favoured().forEach(fall -> remarks.add(favoured(fall, answer)));
    for (SetValve set : settings.valves()) {
      if (set.role() == Role.TOO_COARSE) {
        remarks.add(coarse(set));
      } else if (set.role() == Role.LEFT_ALONE) {
        remarks.add(leftAlone(set));
      } else if (set.role() == Role.THROTTLED && set.valve().loss() instanceof Valve.GivenLoss) {
        remarks.add(unknownHandle(set, answer.units()));
      }
    }
    return remarks;
  }

  private static BalanceRemark tooWeak(ValveSettings settings, ShownUnits units) {
    String fall = settings.governing().value();
    if (settings.pumpShortM().isEmpty()) {
      return new BalanceRemark(
          "wishes-out-of-reach",
          fall,
          "The wishes are out of reach, and more head at the pump would not help: look at what the"
              + " skimmer passes at this level of the pond, at shut valves, and whether a pump"
              + " feeds \""
              + fall
              + "\" at all.");
    }
    String lacks = units.head(settings.pumpShortM().getAsDouble());
    return new BalanceRemark(
        "pump-too-small",
        fall,
        settings.share() == 0
            ? "No water reaches \""
                + fall
                + "\", however the valves stand; all are told wide open. For the wishes the pump"
                + " lacks "
                + lacks
                + " of head."
            : "The pump is too small for the wishes: at their sum it lacks "
                + lacks
                + " of head. Every fall gets "
                + units.share(settings.share())
                + " of its wish instead. A larger pipe or fewer losses on the way to \""
                + fall
                + "\", a stronger pump or narrower crests would help.");
  }

  private static BalanceRemark favoured(PointName fall, BalanceAnswer answer) {
    double gets = answer.settings().state().point(fall).outflowM3PerS();
    double want = answer.settings().state().point(fall).point().wantM3PerS().orElseThrow();
    return new BalanceRemark(
        "more-than-its-share",
        fall.value(),
        "\""
            + fall.value()
            + "\" keeps "
            + answer.units().share(gets / want)
            + " of its wish: no valve among these can hold back just its water. An adjustable valve"
            + " on its own way would, and leave more for the others.");
  }

  private static BalanceRemark coarse(SetValve set) {
    return new BalanceRemark(
        "valve-too-coarse",
        set.place().line().value(),
        "The "
            + set.valve().label()
            + " in \""
            + set.place().line().value()
            + "\" cannot hold back enough: all but shut it still passes too much. A smaller valve,"
            + " a thinner pipe there or a ball valve would.");
  }

  private static BalanceRemark leftAlone(SetValve set) {
    return new BalanceRemark(
        "valve-left-alone",
        set.place().line().value(),
        "No water runs through the valve in \""
            + set.place().line().value()
            + "\" to a fall with a wish, so it stays as it is; what runs through it is lost to the"
            + " falls.");
  }

  private static BalanceRemark unknownHandle(SetValve set, ShownUnits units) {
    return new BalanceRemark(
        "handle-unknown",
        set.place().line().value(),
        "The file gives only a loss coefficient for the valve in \""
            + set.place().line().value()
            + "\", so its handle cannot be told, only the K to reach ("
            + units.number(set.lossCoefficient())
            + "). Write for example \"valve: {type: ball, open: 100 %, adjustable: yes}\".");
  }
}
