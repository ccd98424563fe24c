package rillwright.cli.report.balance;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Valve;
import rillwright.solver.study.valvesetting.SetValve;
import rillwright.solver.study.valvesetting.SetValve.Role;
import rillwright.solver.study.valvesetting.ValvePlace;
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
    } else if (answer.missesAWish()) {
      remarks.add(elsewhere(settings, answer.units()));
    }
    settings.favoured().forEach(fall -> remarks.add(favoured(fall, answer)));
    for (SetValve set : settings.valves()) {
      if (set.role() == Role.TOO_COARSE) {
        remarks.add(coarse(set));
      } else if (set.role() == Role.LEFT_ALONE) {
        remarks.add(leftAlone(set, answer));
      } else if (set.role() == Role.THROTTLED && set.valve().loss() instanceof Valve.GivenLoss) {
        remarks.add(unknownHandle(set, answer.units()));
      }
      if (set.role() == Role.THROTTLED
          && set.valve().loss() instanceof Valve.Opening opening
          && !opening.travel().isPublishedAt(opening.open())) {
        remarks.add(nearlyShut(set, opening, answer.units()));
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
          !settings.state().network().isPumped()
              ? "The wishes are out of reach with this difference in level: a larger pipe or fewer"
                  + " losses on the way to \""
                  + fall
                  + "\", or narrower crests would help, or a pump."
              : "The wishes are out of reach, and more head at the pump would not help: look at"
                  + " what the skimmer passes at this level of the pond, at shut valves, and"
                  + " whether a pump feeds \""
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
                + " of head"
                + (settings.favoured().isEmpty()
                    ? ". Every fall gets "
                    : ", even with what goes elsewhere held back. No fall gets less than ")
                + units.share(settings.share())
                + " of its wish instead. A larger pipe or fewer losses on the way to \""
                + fall
                + "\", a stronger pump or narrower crests would help.");
  }

  /** Head enough, but too much of the water goes where no valve among these holds it back. */
  private static BalanceRemark elsewhere(ValveSettings settings, ShownUnits units) {
    String fall = settings.governing().value();
    boolean pumped = settings.state().network().isPumped();
    return new BalanceRemark(
        "water-goes-elsewhere",
        fall,
        (pumped
                ? "The pump is strong enough for the wishes"
                : "There is head enough for the wishes")
            + ", but \""
            + fall
            + "\" gets "
            + units.share(settings.share())
            + " of its wish, because too much water goes elsewhere. Hold that back first"
            + (pumped ? "; a stronger pump is not needed." : "."));
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
            + " of its wish: no valve among these holds back enough of just its water. "
            + ownValve(fall, answer.settings()));
  }

  /** What would hold back the water of one fall. */
  private static String ownValve(PointName fall, ValveSettings settings) {
    boolean coarse =
        settings.valves().stream()
            .filter(set -> set.role() == Role.TOO_COARSE)
            .anyMatch(set -> settings.state().network().line(set.place().line()).to().equals(fall));
    if (coarse) {
      return "The one on its own way cannot hold back enough.";
    }
    List<LineName> set = settings.valves().stream().map(valve -> valve.place().line()).toList();
    return settings.state().network().lines().stream()
        .filter(line -> line.to().equals(fall) && !set.contains(line.name()))
        .filter(line -> ValvePlace.findIn(line).isPresent())
        .findFirst()
        .map(
            line ->
                "The valve in "
                    + PlainText.quoted(line.name().value())
                    + " would, and leave more for the others: name that line too (--valve), or"
                    + " mark all that may be set \"adjustable: yes\".")
        .orElse("An adjustable valve on its own way would, and leave more for the others.");
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

  private static BalanceRemark nearlyShut(SetValve set, Valve.Opening opening, ShownUnits units) {
    return new BalanceRemark(
        "valve-nearly-shut",
        set.place().line().value(),
        "The "
            + set.valve().label()
            + " in \""
            + set.place().line().value()
            + "\" would stand nearly shut. Published losses end at "
            + units.share(opening.travel().leastPublishedOpening())
            + " open, so the opening told is a guess: set it by the bucket, or put in a smaller"
            + " valve, which sets more finely.");
  }

  private static BalanceRemark leftAlone(SetValve set, BalanceAnswer answer) {
    return new BalanceRemark(
        "valve-left-alone",
        set.place().line().value(),
        "No water runs through the valve in \""
            + set.place().line().value()
            + "\" to a fall with a wish, so it stays as it is; what runs through it is lost to the"
            + " falls."
            + (answer.missesAWish()
                ? " Close it as far as that water can be spared, and they get more."
                : ""));
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
