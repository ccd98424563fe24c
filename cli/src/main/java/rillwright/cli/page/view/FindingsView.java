package rillwright.cli.page.view;

import rillwright.cli.page.desk.Outcome;
import rillwright.cli.page.html.Html;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.text.Cautions;
import rillwright.cli.report.units.Shown;
import rillwright.solver.finding.Finding;

/** What the crew should know, and the cautions that the text has. */
final class FindingsView {
  private FindingsView() {}

  static void print(Outcome outcome, Html html) {
    html.open("section", "id", "findings").leaf("h2", "Warnings and notes");
    outcome
        .solved()
        .ifPresent(
            solved -> {
              if (solved.findings().isEmpty()) {
                html.leaf("p", "No warnings.");
              }
              html.open("ul");
              for (Finding finding : solved.findings()) {
                html.open("li", "class", "care").leaf("span", "!", "class", "mark");
                html.text(" " + finding.message(Shown.of(solved))).close();
              }
              html.close();
            });
    html.leaf("p", Estimate.LINE, "class", "quiet");
    Cautions.of(outcome.project()).forEach(caution -> html.leaf("p", caution, "class", "quiet"));
    html.close();
  }
}
