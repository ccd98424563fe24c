package rillwright.cli.page.panel;

import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.need.ChosenPumps;
import rillwright.cli.page.html.Html;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.picture.LevelsPicture;
import rillwright.cli.report.text.stream.StreamText;
import rillwright.cli.study.stream.StreamAnswer;
import rillwright.cli.study.stream.StreamRequest;
import rillwright.cli.study.stream.StreamRequest.Follow;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Basin;
import rillwright.solver.progress.Progress;

/** How the stream runs and what the pond's level does. */
final class StreamPanel implements Panel {
  private static final String TIMES = "times";

  @Override
  public String name() {
    return "stream";
  }

  @Override
  public String title() {
    return "Stream and levels";
  }

  @Override
  public String what() {
    return "depth and speed of the stream, how far the pond falls, days until it runs dry";
  }

  @Override
  public void form(Project project, Html html) {
    new Form(this, html).tick(TIMES, "follow start and stop in time");
  }

  @Override
  public String answer(Project project, Filled filled, Progress progress) {
    ChosenPumps.require(project);
    if (project.network().points(Basin.class).isEmpty()) {
      throw new InvalidInput(
          project.places().whole(), "there is no basin, so no level can fall or rise; add one");
    }
    boolean follow = filled.isTicked(TIMES);
    if (follow) {
      requireShapes(project);
    }
    StreamAnswer answer =
        new StreamRequest(follow ? Follow.START_AND_STOP : Follow.NO).answer(project, progress);
    Page page = StreamText.of(answer);
    Optional<Page> drawn = answer.course().map(course -> page.with(LevelsPicture.of(answer)));
    return HtmlPage.below(drawn.orElse(page), name());
  }

  private static void requireShapes(Project project) {
    for (Basin basin : project.network().points(Basin.class)) {
      if (basin.shape().isEmpty()) {
        throw new InvalidInput(
            project.places().ofPoint(basin.name()),
            "point "
                + PlainText.quoted(basin.name().value())
                + ": its area is needed to follow its level in time; add the field \"area\"");
      }
    }
  }
}
