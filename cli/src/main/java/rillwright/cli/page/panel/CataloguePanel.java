package rillwright.cli.page.panel;

import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.page.Selection;
import rillwright.cli.catalogue.page.TablePage;
import rillwright.cli.file.Project;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.solver.progress.Progress;

/** Pipes, fittings, lips and beds that the program knows. */
final class CataloguePanel implements Panel {
  @Override
  public String name() {
    return "catalogue";
  }

  @Override
  public String what() {
    return "pipes, fittings, valves, lips and beds, each with its source";
  }

  @Override
  public void form(Project project, Html html) {
    new Form(this, html).choice("table", "table", Selection.all(Catalogue.standard()).names());
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    Catalogue catalogue = Catalogue.standard();
    Selection chosen =
        Selection.find(filled.text("table"), catalogue).orElseGet(() -> Selection.all(catalogue));
    return HtmlPage.below(TablePage.of(chosen), name());
  }
}
