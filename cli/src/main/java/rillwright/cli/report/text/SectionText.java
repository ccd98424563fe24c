package rillwright.cli.report.text;

import rillwright.cli.report.NoBalanceWords;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.section.Section;

/** What is to be said beside the picture of a long section. */
public final class SectionText {
  private SectionText() {}

  /** A short page. */
  public static Page of(Section section) {
    PageBuilder page = ChangedWords.page(section.title(), section.changes());
    section
        .condition()
        .ifPresent(
            name -> {
              page.space();
              page.paragraph("In condition " + name + ".");
            });
    if (section.noBalance().isPresent()) {
      page.space();
      page.paragraph(
          "Drawn by the file, without head lines: "
              + NoBalanceWords.of(section.noBalance().orElseThrow(), Shown.of(section)));
    } else if (section.state().isEmpty()) {
      page.space();
      page.paragraph("Drawn by the file, without head lines: a pump is still to be chosen.");
    }
    if (section.hasSuction()) {
      page.space();
      page.paragraph(
          "A pipe is below atmospheric pressure where it is marked: it draws in air at any leak."
              + " \"rillwright solve\" says what that means. Never leave an open suction where a"
              + " person or child can reach it.");
    }
    page.space();
    SiteCautions.print(section.network(), page);
    page.space();
    return page.build();
  }
}
