package rillwright.cli.report.text.choice;

import java.util.List;
import java.util.Set;
import rillwright.solver.finding.Finding;

/** Findings in the few words of their codes. */
final class FindingCell {
  /** Shown by the verdict, or by the heading, already. */
  private static final Set<String> SHOWN = Set.of("under-target", "over-target", "no-pump");

  private FindingCell() {}

  /** The findings that the verdict does not tell already. */
  static List<Finding> besideTheVerdict(List<Finding> findings) {
    return findings.stream().filter(finding -> !SHOWN.contains(finding.code())).toList();
  }

  static String of(List<Finding> findings) {
    List<String> words =
        besideTheVerdict(findings).stream()
            .map(finding -> finding.code().replace('-', ' '))
            .distinct()
            .toList();
    return words.isEmpty() ? "none" : String.join(", ", words);
  }
}
