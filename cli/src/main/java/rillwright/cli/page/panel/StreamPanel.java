package rillwright.cli.page.panel;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.need.WithBasin;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.panel.form.Form;
import rillwright.cli.page.panel.form.Panel;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.picture.ConditionLevelsPicture;
import rillwright.cli.report.picture.LevelsPicture;
import rillwright.cli.report.text.stream.StreamConditionsText;
import rillwright.cli.report.text.stream.StreamText;
import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.condition.InConditions;
import rillwright.cli.study.stream.StreamAnswer;
import rillwright.cli.study.stream.StreamRequest;
import rillwright.cli.study.stream.StreamRequest.Follow;
import rillwright.curves.chart.content.Chart;
import rillwright.solver.progress.Progress;

/** How the stream runs and what the pond's level does. */
final class StreamPanel implements Panel {
  private static final String TIMES = "times";

  @Override
  public String name() {
    return "stream";
  }

  @Override
  public String what() {
    return "depth and speed of the stream, how far the pond falls, days until it runs dry";
  }

  @Override
  public void form(Project project, Html html) {
    Form form = new Form(this, html);
    form.tick(TIMES, "follow start and stop in time");
    form.conditions();
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    ChosenPumps.require(project);
    WithBasin.require(project);
    boolean follow = filled.isTicked(TIMES);
    if (follow) {
      WithBasin.requireShapes(project);
    }
    StreamRequest request = new StreamRequest(follow ? Follow.START_AND_STOP : Follow.NO);
    if (filled.inConditions(project, ChosenPumps::require).isPresent()) {
      Cases<StreamAnswer> cases = new InConditions<>(request, List.of()).answer(project, progress);
      return shown(StreamConditionsText.of(cases), ConditionLevelsPicture.of(cases));
    }
    StreamAnswer answer = request.answer(project, progress);
    return shown(StreamText.of(answer), answer.course().map(course -> LevelsPicture.of(answer)));
  }

  private String shown(Page page, Optional<? extends Chart> picture) {
    return HtmlPage.below(picture.map(page::with).orElse(page), name());
  }
}
