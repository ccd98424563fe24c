package rillwright.cli.page.view;

import rillwright.cli.page.desk.Outcome;
import rillwright.cli.page.html.Html;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.page.Line;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.text.SiteCautions;
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
    PageBuilder cautions = new PageBuilder(outcome.project().title());
    SiteCautions.print(outcome.project().network(), cautions);
    for (Line line : cautions.build().blocks().get(0).lines()) {
      html.leaf("p", line.text(), "class", "quiet");
    }
    html.close();
  }
}
