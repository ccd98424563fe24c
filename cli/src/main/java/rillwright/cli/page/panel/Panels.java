package rillwright.cli.page.panel;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.PageWords;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.NoBalanceWords;
import rillwright.cli.report.units.Shown;
import rillwright.solver.progress.Progress;
import rillwright.solver.progress.Stopped;
import rillwright.solver.steady.NoBalance;

/** All panels, and the work that they do: one piece of work a panel at a time. */
public final class Panels {
  /** Shorter work is answered at once, ms. */
  private static final long PATIENCE_MS = 400;

  private final List<Panel> panels;
  private final Map<String, Work> works = new ConcurrentHashMap<>();
  private final Consumer<RuntimeException> defects;

  /**
   * All of them.
   *
   * @param folder that of the project
   * @param defects receives what should never happen
   */
  public Panels(Path folder, Consumer<RuntimeException> defects) {
    this.defects = defects;
    SheetChoice sheets = new SheetChoice(folder);
    this.panels =
        List.of(
            new FiguresPanel(),
            new DutyPanel(),
            new PumpsPanel(sheets),
            new PipesPanel(sheets),
            new BalancePanel(),
            new MendPanel(sheets),
            new StreamPanel(),
            new OddsPanel(),
            new WeakPanel(),
            new AsbuiltPanel(),
            new SheetPanel(),
            new CheckPanel(),
            new PicturePanel(),
            new CataloguePanel());
  }

  /** Prints all of them, without their answers. */
  public void print(Project project, Html html) {
    html.open("section", "id", "studies").leaf("h2", "Studies");
    for (Panel panel : panels) {
      html.open("details", "class", "item study", "id", "study-" + panel.name());
      html.open("summary").leaf("b", panel.title()).text(" ");
      html.leaf("span", panel.what()).close();
      html.open("form", "class", "row", "data-panel", panel.name());
      panel.form(project, html);
      html.leaf("button", "Ask").close();
      html.open("div", "id", "besides-" + panel.name());
      panel.besides(project, html);
      html.close();
      html.leaf("div", "", "id", "answer-" + panel.name(), "class", "answer").close();
    }
    html.close();
  }

  /** What belongs to panels and changes with the job, to take the place of what is there. */
  public void printBesides(Project project, Html html) {
    for (Panel panel : panels) {
      html.open("div", "id", "besides-" + panel.name());
      panel.besides(project, html);
      html.close();
    }
  }

  /** Asks a panel: its answer, or how far it has come. */
  public Optional<String> ask(String name, Project project, Filled filled) {
    Optional<Panel> asked = panels.stream().filter(it -> it.name().equals(name)).findFirst();
    asked.ifPresent(
        panel -> {
          Work before = works.put(name, Work.begin(it -> answer(panel, project, filled, it)));
          if (before != null) {
            before.stop();
          }
        });
    return asked.map(it -> soFar(name));
  }

  /** The answer of a panel that was asked, or how far it has come. */
  public String soFar(String name) {
    Work work = works.get(name);
    Html html = new Html();
    html.open("div", "id", "answer-" + name, "class", "answer");
    if (work == null) {
      html.leaf("p", "Nothing was asked.");
    } else if (work.hasEnded(PATIENCE_MS)) {
      html.made(work.answer());
    } else {
      String percent = Integer.toString(work.percent());
      html.open("p", "class", "row", "data-working", name);
      html.leaf(
          "progress", "", "max", "100", "value", percent, "aria-label", "how far it has come");
      html.text(percent + " %");
      html.leaf("button", "Stop", "type", "button", "data-stop", name).close();
    }
    return html.close().done();
  }

  /** Stops the work of a panel. */
  public void stop(String name) {
    Optional.ofNullable(works.get(name)).ifPresent(Work::stop);
  }

  private String answer(Panel panel, Project project, Filled filled, Progress progress) {
    List<String> wrong = new ArrayList<>();
    try {
      return PageWords.here(panel.answer(project, filled, progress));
    } catch (InvalidInput invalid) {
      invalid.faults().stream().map(Fault::message).forEach(wrong::add);
    } catch (NoBalance none) {
      wrong.add(NoBalanceWords.of(none.reason(), Shown.of(project.show())));
    } catch (Stopped stopped) {
      throw stopped;
    } catch (RuntimeException defect) {
      defects.accept(defect);
      wrong.add("a defect in the program; its terminal shows the details");
    }
    Html html = new Html();
    wrong.forEach(message -> html.leaf("p", PageWords.here(message), "class", "fault"));
    return html.done();
  }
}
