package rillwright.cli.report.text.jobsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.cli.report.balance.BalanceRemarks;
import rillwright.cli.report.mend.FirstWords;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.SheetAnswer.AsSet;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;

/** What all studies found, the gravest first, each once. */
final class FindingsList {
  private FindingsList() {}

  static void print(AsSet set, PageBuilder page) {
    ShownUnits units = Shown.of(set.solved());
    Map<String, Finding> found = new LinkedHashMap<>();
    for (Finding finding : all(set)) {
      found.putIfAbsent(finding.message(units), finding);
    }
    page.heading("WARNINGS AND NOTES");
    if (found.isEmpty()) {
      page.paragraph("No warnings from these checks.");
    }
    found.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.comparing(Finding::severity)))
        .forEach(
            entry ->
                page.marked(
                    mark(entry.getValue().severity()),
                    word(entry.getValue().severity()) + entry.getKey()));
    FirstWords.alsoOf(set.mend()).forEach(words -> page.marked("- ", words));
  }

  static List<Finding> all(AsSet set) {
    List<Finding> all = new ArrayList<>(set.solved().findings());
    set.stream().ifPresent(stream -> all.addAll(stream.budget().findings()));
    set.settings().ifPresent(settings -> all.addAll(BalanceRemarks.of(settings)));
    return all;
  }

  private static String mark(Severity severity) {
    return severity == Severity.DANGER || severity == Severity.PROBLEM ? "! " : "- ";
  }

  private static String word(Severity severity) {
    return switch (severity) {
      case DANGER -> "Danger. ";
      case PROBLEM -> "Problem. ";
      case ADVICE -> "Advice. ";
      case NOTE -> "";
    };
  }
}
