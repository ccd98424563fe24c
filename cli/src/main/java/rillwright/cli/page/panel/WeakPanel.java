package rillwright.cli.page.panel;

import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.visit.Visit;
import rillwright.cli.file.visit.VisitReader;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.WeakJob;
import rillwright.cli.page.html.Html;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.picture.CausesPicture;
import rillwright.cli.report.text.weak.WeakText;
import rillwright.cli.study.weak.BuiltJob;
import rillwright.cli.study.weak.CausesRequest;
import rillwright.cli.study.weak.NothingExplains;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.cli.study.weak.WeakRequest;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.diagnosis.cause.Sign;
import rillwright.solver.study.diagnosis.inference.Diagnostician.Sizes;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/** Why a fall is weak: readings as they are taken, likely causes, what to read next. */
final class WeakPanel implements Panel {
  @Override
  public String name() {
    return "weak";
  }

  @Override
  public String title() {
    return "Weak fall";
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
    return project
        .tree()
        .find(section)
        .map(entry -> entry.value() instanceof ListNode list ? list.items().size() : 0)
        .orElse(0);
  }

  @Override
  public void besides(Project project, Html html) {
    html.leaf("p", counted(project), "class", "quiet");
    html.open("form", "class", "row", "data-do", "add-reading");
    html.open("label", "for", "reading-what").text("what was read").close();
    html.open("select", "id", "reading-what", "name", "what", "class", "wide");
    for (Map.Entry<String, String> one : ReadingKinds.of(project).entrySet()) {
      html.leaf("option", one.getValue(), "value", one.getKey());
    }
    html.close();
    field(html, "value", "its value", "8.6 s");
    field(html, "within", "within", "7 %");
    html.leaf("button", "Add reading").close();
    html.open("form", "class", "row", "data-do", "add-sign");
    html.open("label", "for", "sign-what").text("what was seen").close();
    html.open("select", "id", "sign-what", "name", "value");
    Sign.names().forEach(sign -> html.leaf("option", sign));
    html.close();
    html.leaf("button", "Add sign").close();
    html.open("p", "class", "row");
    taken(project, "readings", html);
    taken(project, "signs", html);
    html.close();
  }

  private static void field(Html html, String name, String label, String example) {
    html.open("label", "for", "reading-" + name).text(label).close();
    html.empty(
        "input",
        "id",
        "reading-" + name,
        "name",
        name,
        "placeholder",
        example,
        "required",
        "",
        "autocomplete",
        "off");
  }

  private static void taken(Project project, String section, Html html) {
    int count = count(project, section);
    if (count > 0) {
      html.leaf(
          "button",
          "Take away the last of " + count + " " + section,
          "type",
          "button",
          "data-do",
          "remove",
          "data-at",
          section + "." + count);
    }
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    ChosenPumps.require(project, "; an existing job has a pump, so name it");
    AsBuilt built = BuiltJob.of(project);
    WeakJob job = new WeakJob(project, built);
    job.requireFlow();
    Visit visit = VisitReader.inProject(project);
    job.requireCall(visit);
    try {
      WeakAnswer answer =
          new WeakRequest(Optional.of(visit), new CausesRequest(Optional.empty()), Sizes.CALLED_FOR)
              .answer(project, progress);
      return HtmlPage.below(WeakText.of(answer).with(CausesPicture.of(answer)), name());
    } catch (NothingExplains nothing) {
      throw job.unexplained(Optional.empty());
    }
  }
}
