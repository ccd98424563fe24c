package rillwright.cli.report.text.mend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rillwright.cli.report.units.NearLimit;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.mend.site.Need;
import rillwright.solver.trial.Verdict;

/** What is in need, in a few words. */
final class NeedWords {
  private static final String WHOLE_TARGET =
      "What is built may stay up to 5 % under target, here as in the choice of pumps and pipes; a"
          + " change has to bring the whole target, 100 to 125 % of it (common practice).";

  private static final String WHOLE_IN_CONDITIONS =
      "As written, what is built may stay up to 5 % under target, here as in the choice of pumps"
          + " and pipes; in conditions, and once a stream has filled, anything under the whole"
          + " target counts; the worst of them is listed. A change has to bring the whole target in"
          + " each of them, and as written 100 to 125 % of it (common practice).";

  private NeedWords() {}

  /** How much of its target is enough for what is built, and for a change. */
  static String wholeTarget(List<Need> needs) {
    return needs.stream().anyMatch(Need::isOfCondition) ? WHOLE_IN_CONDITIONS : WHOLE_TARGET;
  }

  /** Without place and condition. */
  static String what(Need need) {
    return switch (need.code()) {
      case Need.UNDER_IN_CONDITION, Need.UNDER_RUNNING -> "under target";
      case Need.TOUCHY -> "sensitive to the pond's level";
      case Need.STARVED -> "down at its pump's intake";
      case "starves-at-start" -> "starves as the stream fills";
      case "skimmer-at-its-limit" -> "has a skimmer that only just passes the flow";
      default -> need.code().replace('-', ' ').replace("npsh", "NPSH");
    };
  }

  /** In which state it is so. */
  static String when(Need need) {
    return need.condition()
        .map(condition -> "in \"" + condition + "\"")
        .orElse(need.isOfCondition() ? "once the stream has filled" : "as written");
  }

  /** All of some, with their places, each place once, and what falls get of their targets. */
  static String of(List<Need> needs, ShownUnits units) {
    Map<String, List<String>> byPlace = new LinkedHashMap<>();
    for (Need need : needs) {
      byPlace
          .computeIfAbsent("\"" + need.at() + "\" ", none -> new ArrayList<>())
          .add(need.isOfTarget() || need.isOfCondition() ? gets(need, units) : what(need));
    }
    return byPlace.entrySet().stream()
        .map(place -> place.getKey() + String.join(" and ", place.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static String gets(Need need, ShownUnits units) {
    double share = need.hasM3PerS() / need.targetM3PerS().orElse(Double.NaN);
    return (share > Verdict.TOO_MUCH_SHARE
            ? "over " + units.share(Verdict.TOO_MUCH_SHARE)
            : "at " + (share < 1 ? NearLimit.below(share, 1, units) : units.share(share)))
        + (need.isOfCondition() ? " " + when(need) : "");
  }
}
