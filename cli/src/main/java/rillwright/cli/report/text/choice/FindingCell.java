package rillwright.cli.report.text.choice;

import java.util.List;
import rillwright.solver.finding.Finding;

/** Findings in the few words of their codes. */
final class FindingCell {
  /** Told by the verdict already. */
  private static final String UNDER_WISH = "under-wish";

  private FindingCell() {}

  static String of(List<Finding> findings) {
    List<String> words =
        findings.stream()
            .map(Finding::code)
            .filter(code -> !code.equals(UNDER_WISH))
            .map(code -> code.replace('-', ' '))
            .distinct()
            .toList();
    return words.isEmpty() ? "nothing" : String.join(", ", words);
  }
}
