package rillwright.cli.report.balance;

import java.util.Optional;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.balance.BalanceAnswer;
import rillwright.curves.wording.PlainText;
import rillwright.solver.study.valvesetting.SetValve;
import rillwright.solver.study.valvesetting.ValveSettings;
import rillwright.solver.trial.Verdict;

/** What every fall gets with valves so set, and what decides it. */
public final class SharingWords {
  private SharingWords() {}

  /** One or two sentences; of a search that was cut short not why no more can be had. */
  public static String of(BalanceAnswer answer) {
    ValveSettings settings = answer.settings();
    String computed =
        "Computed for these settings: "
            + (settings.favoured().isEmpty() ? "every fall at " : "no fall below ")
            + Shown.of(answer).share(settings.targetFraction())
            + " of its target.";
    if (settings.cutShort()) {
      return computed;
    }
    return computed
        + " "
        + (settings.heldToTargets() && !settings.listThrottled().isEmpty()
            ? heldToTargets(settings)
            : governed(answer));
  }

  /** That the settings aim at more than the targets, and what aims at these; empty if they do. */
  public static Optional<String> tooMuch(BalanceAnswer answer) {
    ValveSettings settings = answer.settings();
    return settings.heldToTargets() || settings.targetFraction() <= Verdict.TOO_MUCH_SHARE
        ? Optional.empty()
        : Optional.of(
            "These settings do not hold the falls to their targets: "
                + (settings.favoured().isEmpty() ? "every fall at " : "no fall below ")
                + Shown.of(answer).share(settings.targetFraction())
                + " of its target. For the targets themselves, at which a remedy aims, use"
                + " \"rillwright balance --target\".");
  }

  private static String nothingHeldBack(BalanceAnswer answer) {
    ValveSettings settings = answer.settings();
    boolean leftAlone =
        settings.valves().stream().anyMatch(set -> set.role() == SetValve.Role.LEFT_ALONE);
    if (!settings.favoured().isEmpty()) {
      return ", and none of these valves can throttle the others for it.";
    }
    return leftAlone && answer.missesATarget()
        ? ", and no other fall with a target can be throttled for it."
        : ", and nothing needs to be throttled for it.";
  }

  private static String heldToTargets(ValveSettings settings) {
    return (settings.state().network().isPumped()
            ? "The pump gives more than the targets: the excess is throttled, and some of its power"
                + " is lost in the valves; "
            : "There is more head than the targets need: the excess is throttled; ")
        + (settings.favoured().isEmpty()
            ? "a setting not held to the targets would give all of them more."
            : "a setting not held to the targets would give the fall with the least more.");
  }

  private static String governed(BalanceAnswer answer) {
    ValveSettings settings = answer.settings();
    String governs =
        PlainText.quoted(settings.governing().value()) + " governs: it needs the most head";
    if (settings.listThrottled().isEmpty()) {
      return governs + nothingHeldBack(answer);
    }
    return governs
        + (settings.opensGoverningWay()
            ? ", so its valves stay wide open and the others are throttled."
            : ", so the others are throttled and its own line stays as it is.");
  }
}
