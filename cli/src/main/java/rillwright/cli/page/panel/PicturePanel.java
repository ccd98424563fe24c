package rillwright.cli.page.panel;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.page.Head;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.picture.section.SectionPicture;
import rillwright.cli.report.picture.section.SectionPicture.ShutOff;
import rillwright.cli.report.picture.section.SketchPicture;
import rillwright.cli.study.section.Section;
import rillwright.cli.study.section.SectionRequest;
import rillwright.solver.progress.Progress;

/** The long section or the sketch of the network, with all its figures. */
final class PicturePanel implements Panel {
  private static final String SKETCH = "sketch of the network";

  @Override
  public String name() {
    return "section";
  }

  @Override
  public String what() {
    return "the long section or a sketch with every figure, to look at or print";
  }

  @Override
  public void form(Project project, Html html) {
    Form form = new Form(this, html);
    form.choice("kind", "kind", List.of("long section", SKETCH));
    form.tick("shut", "heads against a shut valve");
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    Section section = new SectionRequest().answer(project, progress);
    boolean sketch = filled.text("kind").equals(SKETCH) || !section.hasElevations();
    PageBuilder page = new PageBuilder(section.title());
    ShutOff shutOff = filled.isTicked("shut") ? ShutOff.SHOWN : ShutOff.LEFT_OUT;
    page.show(
        new Head.Picture(sketch ? SketchPicture.of(section) : SectionPicture.of(section, shutOff)));
    return HtmlPage.below(page.build(), name());
  }
}
