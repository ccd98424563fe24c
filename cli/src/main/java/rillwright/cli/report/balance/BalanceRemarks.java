package rillwright.cli.report.balance;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.report.HandleWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.balance.BalanceAnswer;
import rillwright.curves.wording.PlainText;
import rillwright.solver.finding.Figure.Unit;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Findings;
import rillwright.solver.finding.Severity;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Valve;
import rillwright.solver.pumping.Targets;
import rillwright.solver.study.valvesetting.SetValve;
import rillwright.solver.study.valvesetting.SetValve.Role;
import rillwright.solver.study.valvesetting.ValvePlace;
import rillwright.solver.study.valvesetting.ValveSettings;

/** What the crew should know about valve settings. */
public final class BalanceRemarks {
  private BalanceRemarks() {}

  /** All that there is to say, the gravest first. */
  public static List<Finding> of(BalanceAnswer answer) {
    List<Finding> remarks = new ArrayList<>();
    ValveSettings settings = answer.settings();
    List<Finding> found = Findings.of(settings.state());
    remarks.addAll(of(found, "cannot-start"));
    if (settings.cutShort()) {
      remarks.add(cutShort(settings));
    } else if (!settings.headIsKnown()) {
      remarks.add(headUnknown(settings));
    } else if (remarks.isEmpty() && settings.missingHeadM().orElse(1) > 0) {
      remarks.add(tooWeak(settings));
    } else if (remarks.isEmpty() && answer.missesATarget()) {
      remarks.add(elsewhere(settings));
    }
    settings.favoured().forEach(fall -> remarks.add(favoured(fall, answer)));
    for (SetValve set : settings.valves()) {
      if (set.role() == Role.TOO_COARSE) {
        remarks.add(coarse(set));
      } else if (set.role() == Role.LEFT_ALONE) {
        remarks.add(leftAlone(set, answer));
      } else if (set.role() == Role.THROTTLED && set.valve().loss() instanceof Valve.GivenLoss) {
        remarks.add(
            set.lossCoefficient().isEmpty() ? toBeShut(set) : unknownHandle(set, Shown.of(answer)));
      }
      if (set.role() == Role.THROTTLED
          && set.valve().loss() instanceof Valve.Opening opening
          && !opening.travel().isPublishedAt(opening.open())) {
        remarks.add(nearlyShut(set, opening));
      }
    }
    remarks.addAll(of(found, "held-basin-needs-inflow"));
    return remarks;
  }

  private static List<Finding> of(List<Finding> found, String code) {
    return found.stream().filter(finding -> finding.code().equals(code)).toList();
  }

  /** What was found so far stands; of the head that is missing nothing is known. */
  private static Finding cutShort(ValveSettings settings) {
    String fall = settings.governing().value();
    return Finding.of(
            Severity.ADVICE,
            "search-cut-short",
            fall,
            "The job is so large that the search for these settings was cut short: better ones may"
                + " exist. Computed for these settings: no fall below ")
        .share("targetFraction", settings.targetFraction())
        .then(" of its target. With fewer valves at a time the search goes further.");
  }

  /** The settings stand; of the head that is missing nothing is known. */
  private static Finding headUnknown(ValveSettings settings) {
    return Finding.of(
            Severity.PROBLEM,
            "missing-head-unknown",
            settings.governing().value(),
            "Not every target is met: with these settings no fall gets less than ")
        .share("targetFraction", settings.targetFraction())
        .then(
            " of its target. The job is so large that the search for the head that is missing was"
                + " cut short.");
  }

  private static Finding tooWeak(ValveSettings settings) {
    String fall = settings.governing().value();
    if (settings.missingHeadM().isEmpty()) {
      return Finding.of(
          Severity.PROBLEM,
          "targets-out-of-reach",
          fall,
          !settings.state().network().isPumped()
              ? "The targets are out of reach with this difference in level: \"rillwright mend\""
                  + " shows what would help on the way to \""
                  + fall
                  + "\"."
              : "The targets are out of reach, and more head at the pump would not help: look at"
                  + " what the skimmer passes at this level of the pond, at shut valves, and"
                  + " whether a pump feeds \""
                  + fall
                  + "\" at all.");
    }
    if (settings.targetFraction() == 0) {
      return Finding.of(
              Severity.PROBLEM,
              "pump-too-small",
              fall,
              "No water reaches \""
                  + fall
                  + "\", whatever the valve openings; all are shown wide open. For the targets the"
                  + " pump lacks ")
          .head("lack", settings.missingHeadM().getAsDouble())
          .then(" of head.");
    }
    return whatThePumpLacks(settings)
        .then(settings.favoured().isEmpty() ? ". Every fall gets " : ". No fall gets less than ")
        .share("targetFraction", settings.targetFraction())
        .then(
            " of its target instead. \"rillwright mend\" shows what would help on the way to \""
                + fall
                + "\".");
  }

  /** Head; but of a pump whose curve ends before the flow of all targets nobody knows its head. */
  private static Finding whatThePumpLacks(ValveSettings settings) {
    Network network = settings.state().network();
    List<Placed<Pump>> pumps = network.placed(Pump.class);
    double asked = Targets.of(network).sumM3PerS();
    double end = pumps.stream().mapToDouble(it -> it.part().set().publishedRangeM3PerS()).sum();
    Finding small =
        Finding.of(
            Severity.PROBLEM,
            "pump-too-small",
            settings.governing().value(),
            "The pump is too small for the targets: ");
    return pumps.size() == 1 && asked > end
        ? small
            .then("together they ask for ")
            .flow("targets", asked)
            .then(", and its curve ends at ")
            .writtenFlow("lastPublishedFlow", end)
        : small
            .then("at the flow of all targets it lacks ")
            .head("lack", settings.missingHeadM().getAsDouble())
            .then(" of head")
            .then(settings.favoured().isEmpty() ? "" : ", even with what goes elsewhere held back");
  }

  /** Head enough, but too much of the water goes where no valve among these holds it back. */
  private static Finding elsewhere(ValveSettings settings) {
    String fall = settings.governing().value();
    boolean pumped = settings.state().network().isPumped();
    return Finding.of(
            Severity.PROBLEM,
            "water-goes-elsewhere",
            fall,
            (pumped
                    ? "The pump is strong enough for the targets"
                    : "There is head enough for the targets")
                + ", but \""
                + fall
                + "\" gets ")
        .share("targetFraction", settings.targetFraction())
        .then(" of its target, because too much water goes elsewhere. Hold that back first")
        .then(pumped ? "; a stronger pump is not needed." : ".");
  }

  private static Finding favoured(PointName fall, BalanceAnswer answer) {
    double gets = answer.settings().state().point(fall).outflowM3PerS();
    double target = answer.settings().state().point(fall).point().targetM3PerS().orElseThrow();
    return Finding.of(
            Severity.ADVICE, "more-than-its-share", fall.value(), "\"" + fall.value() + "\" keeps ")
        .share("targetFraction", gets / target)
        .then(" of its target: no valve among these holds back enough of just its water. ")
        .then(ownValve(fall, answer.settings()));
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
                    + " would, and leave more for the others: name that line too, or mark all that"
                    + " may be set \"adjustable: yes\".")
        .orElse("An adjustable valve on its own way would, and leave more for the others.");
  }

  private static Finding coarse(SetValve set) {
    return Finding.of(
        Severity.PROBLEM,
        "valve-too-coarse",
        line(set),
        the(set)
            + " cannot hold back enough: all but shut it still passes too much. A smaller valve, a"
            + " thinner pipe there or a ball valve would.");
  }

  private static Finding nearlyShut(SetValve set, Valve.Opening opening) {
    return Finding.of(
            Severity.ADVICE,
            "valve-nearly-shut",
            line(set),
            the(set) + " would stand nearly shut. Published losses end at ")
        .share("leastPublishedOpening", opening.travel().leastPublishedOpening())
        .then(
            " open, so the opening shown is an estimate: set it by the bucket, or fit a smaller"
                + " valve, which sets more finely.");
  }

  private static Finding leftAlone(SetValve set, BalanceAnswer answer) {
    return Finding.of(
        Severity.ADVICE,
        "valve-left-alone",
        line(set),
        "No water runs through the valve in \""
            + line(set)
            + "\" to a fall with a target, so it stays as it is; what runs through it is lost to"
            + " the falls."
            + (answer.missesATarget()
                ? " Close it as far as that water can be spared, and they get more."
                : ""));
  }

  private static Finding toBeShut(SetValve set) {
    return Finding.of(
        Severity.ADVICE,
        "valve-to-be-shut",
        line(set),
        the(set)
            + " is to be shut: its falls get their share by other ways, and what it lets through is"
            + " too much.");
  }

  private static Finding unknownHandle(SetValve set, ShownUnits units) {
    double lossCoefficient = set.lossCoefficient().orElseThrow();
    return Finding.of(
            Severity.NOTE,
            "handle-unknown",
            line(set),
            "The file gives only a loss coefficient for the valve in \""
                + line(set)
                + "\", so its handle position is not known: set it like "
                + HandleWords.ofBallValve(lossCoefficient)
                + " (K ")
        .figure(
            "lossCoefficient",
            lossCoefficient,
            Unit.ONE,
            wording -> units.computed(lossCoefficient))
        .then("). Write for example \"valve: {type: ball, open: 100 %, adjustable: yes}\".");
  }

  private static String line(SetValve set) {
    return set.place().line().value();
  }

  private static String the(SetValve set) {
    return "The " + set.valve().label() + " in \"" + line(set) + "\"";
  }
}
