package rillwright.cli.report.text.choice;

import java.util.List;
import java.util.Set;
import rillwright.curves.wording.PlainText;
import rillwright.solver.finding.Finding;
import rillwright.solver.network.LineName;

/** Findings in the few words of their codes. */
final class FindingCell {
  /** Shown by the verdict, or by the heading, already. */
  private static final Set<String> SHOWN = Set.of("under-target", "over-target", "no-pump");

  /** Said of the lines beside which they stand, and so with the name of any other line. */
  private static final Set<String> OF_SPEED = Set.of("fast-suction", "fast-discharge", "fast-pipe");

  private FindingCell() {}

  /** The findings that the verdict does not tell already. */
  static List<Finding> besideTheVerdict(List<Finding> findings) {
    return findings.stream().filter(finding -> !SHOWN.contains(finding.code())).toList();
  }

  static String of(List<Finding> findings) {
    return of(findings, Set.of());
  }

  /**
   * The same beside the speed in some lines.
   *
   * @param lines these lines; a speed elsewhere names its line
   */
  static String of(List<Finding> findings, Set<LineName> lines) {
    List<String> words =
        besideTheVerdict(findings).stream()
            .map(finding -> finding.code().replace('-', ' ') + elsewhere(finding, lines))
            .distinct()
            .toList();
    return words.isEmpty() ? "none" : String.join(", ", words);
  }

  private static String elsewhere(Finding finding, Set<LineName> lines) {
    boolean other =
        OF_SPEED.contains(finding.code())
            && lines.stream().noneMatch(it -> it.value().equals(finding.at()));
    return other && !lines.isEmpty() ? " in " + PlainText.quoted(finding.at()) : "";
  }
}
