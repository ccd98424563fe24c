package rillwright.cli.page.panel;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.file.visit.Visit;
import rillwright.cli.file.visit.VisitReader;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.WeakJob;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.page.panel.reading.LookButtons;
import rillwright.cli.page.panel.reading.ReadingKinds;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.picture.CausesPicture;
import rillwright.cli.report.text.weak.NextTable;
import rillwright.cli.report.text.weak.WeakText;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.report.weak.RiskWords;
import rillwright.cli.study.weak.BuiltJob;
import rillwright.cli.study.weak.CausesRequest;
import rillwright.cli.study.weak.NothingExplains;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.cli.study.weak.WeakRequest;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.study.diagnosis.cause.Sign;
import rillwright.solver.study.diagnosis.inference.Diagnostician.Sizes;
import rillwright.solver.study.diagnosis.inference.NextReading;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Effort.Risk;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.MeasurandList;
import rillwright.solver.study.diagnosis.reading.Sight;

/** Why a fall is weak: readings as they are taken, likely causes, what to read next. */
final class WeakPanel implements Panel {
  private static final String SLIGHT = "slight";

  @Override
  public String name() {
    return "weak";
  }

  @Override
  public String what() {
    return "enter readings as you take them: likely causes, what to read next";
  }

  private static String counted(Project project) {
    int readings = count(project, "readings");
    int signs = count(project, "signs");
    return readings
        + (readings == 1 ? " reading, " : " readings, ")
        + signs
        + (signs == 1 ? " sign" : " signs")
        + " in the job";
  }

  private static int count(Project project, String section) {
    return project.tree().listItems(section).size();
  }

  @Override
  public void form(Project project, Html html) {
    new Form(this, html).tick(SLIGHT, "slight faults too");
  }

  @Override
  public void besides(Project project, Html html) {
    html.leaf("p", counted(project), "class", "quiet");
    List<Measurand> all = readable(project);
    ShownUnits units = Shown.of(project.show());
    looks(all, project, units, html);
    html.open("form", "class", "row", "data-do", "add-reading");
    html.open("label", "for", "reading-what").text("what was read").close();
    html.open("select", "id", "reading-what", "name", "at", "class", "wide");
    List<ReadingKinds.Kind> kinds =
        all.stream().flatMap(it -> ReadingKinds.of(it, project.network(), units).stream()).toList();
    kinds.forEach(
        it -> html.leaf("option", it.words(), "value", it.written(), "data-example", it.example()));
    html.close();
    String example = kinds.isEmpty() ? "" : kinds.get(0).example();
    field(html, "value", "its value", example, "required");
    field(html, "within", "within, if you know", "7 %", "");
    html.leaf("button", "Add reading").close();
    cautions(all, project, html);
    html.open("form", "class", "row", "data-do", "add-sign");
    html.open("label", "for", "sign-what").text("what was seen").close();
    html.open("select", "id", "sign-what", "name", "value");
    Sign.names().forEach(sign -> html.leaf("option", sign));
    html.close();
    html.leaf("button", "Add sign").close();
    taken("readings", readings(project, units), html);
    taken("signs", items(project, "signs"), html);
  }

  /** What can be read; nothing where nothing flows. */
  private static List<Measurand> readable(Project project) {
    if (!PumpPlace.listPlanned(project.network()).isEmpty()) {
      return List.of();
    }
    try {
      return MeasurandList.of(AsBuilt.of(project.network()));
    } catch (NoBalance none) {
      return List.of();
    }
  }

  /** What takes no more than eyes: asked before gauges. */
  private static void looks(List<Measurand> all, Project project, ShownUnits units, Html html) {
    List<Sight> sights =
        all.stream().filter(Sight.class::isInstance).map(Sight.class::cast).toList();
    if (sights.isEmpty()) {
      return;
    }
    LookButtons buttons = new LookButtons(project, new ReadingWords(units), html);
    html.open("details", "id", "looks-weak").leaf("summary", "Look first: it costs nothing");
    sights.forEach(buttons::write);
    html.close();
  }

  /** What to mind while these are read. */
  private static void cautions(List<Measurand> all, Project project, Html html) {
    Set<Risk> risks = EnumSet.noneOf(Risk.class);
    all.forEach(it -> risks.add(it.effort().risk()));
    html.open("details").leaf("summary", "Mind while reading");
    for (Risk risk : risks) {
      String caution = RiskWords.of(risk, project.network().isPumped()).sentence();
      if (!caution.isEmpty()) {
        html.leaf("p", caution);
      }
    }
    if (project.network().isPumped()) {
      html.leaf("p", RiskWords.TRIPS);
    }
    html.close();
  }

  private static void field(Html html, String name, String label, String example, String required) {
    html.open("label", "for", "reading-" + name).text(label).close();
    html.empty(
        "input",
        "id",
        "reading-" + name,
        "name",
        name,
        "placeholder",
        example,
        required,
        "",
        "autocomplete",
        "off");
  }

  /** What was read, in words; as the file has it where something is wrong with that. */
  private static List<String> readings(Project project, ShownUnits units) {
    ReadingWords words = new ReadingWords(units);
    try {
      return VisitReader.inProject(project).readings().stream()
          .map(it -> words.opening(it.what()) + ": " + words.value(it.what(), it.value()))
          .toList();
    } catch (InvalidInput wrong) {
      return items(project, "readings");
    }
  }

  private static List<String> items(Project project, String section) {
    return project.tree().listItems(section).stream().map(WeakPanel::said).toList();
  }

  /** What the job holds of it, each to be taken away again. */
  private static void taken(String section, List<String> items, Html html) {
    for (int i = 0; i < items.size(); i++) {
      String said = items.get(i);
      html.open("p", "class", "row").leaf("span", said);
      html.leaf(
          "button",
          "\u00d7",
          "type",
          "button",
          "data-do",
          "remove",
          "data-at",
          section + "." + (i + 1),
          "aria-label",
          "take away " + said);
      html.close();
    }
  }

  private static String said(Node item) {
    return item instanceof MapNode map
        ? map.entries().stream()
            .map(field -> field.key() + ": " + said(field.value()))
            .collect(Collectors.joining(", "))
        : item instanceof Scalar text ? text.text() : item.words();
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    ChosenPumps.require(project, "; an existing job has a pump, so name it");
    AsBuilt built = BuiltJob.of(project);
    WeakJob job = new WeakJob(project, built, "tick \"slight faults too\"");
    job.requireFlow();
    Visit visit = VisitReader.inProject(project);
    boolean slight = filled.isTicked(SLIGHT);
    if (!slight) {
      job.requireCall(visit);
    }
    try {
      WeakAnswer answer =
          new WeakRequest(
                  Optional.of(visit),
                  new CausesRequest(Optional.empty()),
                  slight ? Sizes.ALL : Sizes.CALLED_FOR)
              .answer(project, progress);
      Html html = new Html();
      next(answer, project, html);
      html.made(HtmlPage.below(WeakText.of(answer).with(CausesPicture.of(answer)), name()));
      return html.done();
    } catch (NothingExplains nothing) {
      throw job.unexplained(Optional.empty());
    }
  }

  /** Each reading that would tell most, to be entered at a touch. */
  private static void next(WeakAnswer answer, Project project, Html html) {
    if (NextTable.shown(answer).isEmpty()) {
      return;
    }
    html.open("div", "class", "row").leaf("span", "Read next:");
    for (NextReading next : NextTable.shown(answer)) {
      if (next.what() instanceof Sight sight) {
        String what = new ReadingWords(Shown.of(answer)).opening(sight);
        html.leaf("a", what, "href", "#" + LookButtons.id(sight));
      }
      ReadingKinds.of(next.what(), project.network(), Shown.of(answer)).stream()
          .findFirst()
          .ifPresent(
              kind ->
                  html.leaf(
                      "button", kind.words(), "type", "button", "data-reading", kind.written()));
    }
    html.close();
  }
}
