package rillwright.cli.page.panel;

import rillwright.cli.file.Project;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Panel;
import rillwright.solver.progress.Progress;

/** The job sheet, to open and print, and the lists that belong to it. */
final class SheetPanel implements Panel {
  @Override
  public String name() {
    return "sheet";
  }

  @Override
  public String what() {
    return "to print or send: settings, trench, materials, what to measure";
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    Html html = new Html();
    html.leaf("p", "Each opens in a page of its own, of the job with all changes.");
    html.open("ul", "class", "links");
    link(html, "sheet", "everything");
    link(html, "sheet?for=crew", "for the crew");
    link(html, "sheet?for=customer", "for the customer");
    link(html, "sheet?for=lid", "cards for the pump's lid and the valve box");
    link(html, "materials.csv", "materials, for a spreadsheet");
    link(html, "readings.yaml", "readings to fill in at start-up");
    return html.close().done();
  }

  private static void link(Html html, String address, String words) {
    html.open("li");
    html.leaf("a", words, "href", address, "target", "_blank", "rel", "noopener");
    html.close();
  }
}
