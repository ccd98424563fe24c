package rillwright.cli.report.text.jobsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
  /** What only another design changes: those who dig, glue and set can do nothing about it. */
  private static final Set<String> OF_DESIGN =
      Set.of(
          "doubtful-sheet",
          "doubtful-target",
          "far-from-best-efficiency",
          "fast-discharge",
          "fast-pipe",
          "fast-suction",
          "missing-head-unknown",
          "more-than-its-share",
          "pump-too-small",
          "search-cut-short",
          "slow-gravity-line",
          "steeper-than-critical",
          "targets-out-of-reach",
          "thin-sheet",
          "water-temperature-assumed");

  private FindingsList() {}

  static void print(AsSet set, PageBuilder page) {
    print(set, all(set), "No warnings from these checks.", page);
    FirstWords.alsoOf(set.mend()).forEach(words -> page.marked("- ", words));
  }

  /** What concerns those who build it. */
  static void forCrew(AsSet set, PageBuilder page) {
    List<Finding> all = all(set);
    List<Finding> theirs = all.stream().filter(it -> !OF_DESIGN.contains(it.code())).toList();
    boolean isWhole = theirs.size() == all.size();
    print(
        set,
        theirs,
        isWhole ? "No warnings from these checks." : "No warnings for the crew.",
        page);
    if (!isWhole) {
      page.paragraph("Warnings about the design stand on the job sheet.");
    }
  }

  private static void print(AsSet set, List<Finding> findings, String none, PageBuilder page) {
    ShownUnits units = Shown.of(set.solved());
    Map<String, Finding> found = new LinkedHashMap<>();
    for (Finding finding : findings) {
      found.putIfAbsent(finding.message(units), finding);
    }
    page.heading("WARNINGS AND NOTES");
    if (found.isEmpty()) {
      page.paragraph(none);
    }
    found.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.comparing(Finding::severity)))
        .forEach(
            entry ->
                page.marked(
                    mark(entry.getValue().severity()),
                    word(entry.getValue().severity()) + entry.getKey()));
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
