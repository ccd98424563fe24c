package rillwright.cli.page.start;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.interview.Answers;
import rillwright.cli.interview.Draft;
import rillwright.cli.interview.Interview;
import rillwright.cli.interview.Question;
import rillwright.cli.interview.Questions;
import rillwright.cli.output.NewFile;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.view.Shell;
import rillwright.cli.page.web.Asked;
import rillwright.cli.page.web.Asked.Method;
import rillwright.cli.page.web.Reply;

/** Answers of the page while the job is still to be made; its file is written at the end. */
public final class StartAnswers implements Function<Asked, Reply> {
  private static final int USUAL_WIDTH = 360;
  private static final String USUAL_NAME = "pond.yaml";

  private final Path folder;
  private final Optional<Path> file;
  private final Consumer<Path> begun;

  /**
   * Of a new job.
   *
   * @param folder into which it is written
   * @param file to be written; empty to ask for its name
   * @param begun receives the file once it is written
   */
  public StartAnswers(Path folder, Optional<Path> file, Consumer<Path> begun) {
    this.folder = folder;
    this.file = file;
    this.begun = begun;
  }

  @Override
  public Reply apply(Asked asked) {
    boolean looks = asked.method() == Method.GET;
    return switch (asked.path()) {
      case "" -> looks ? Reply.html(Shell.of("A new job", view(asked).html(true))) : begin(asked);
      case "pieces", "draw" -> Reply.html(view(asked).html(false));
      case "state" -> Reply.html("");
      case "begin" -> looks ? Reply.refused("a job is made by a form") : begin(asked);
      default -> Reply.refused("there is no such piece of the page");
    };
  }

  private Reply begin(Asked asked) {
    StartView view = view(asked);
    try {
      Path target = file.orElseGet(() -> named(asked.text("file name").strip()));
      boolean copied =
          asked.find("example").isPresent() && Examples.copy(asked.text("example"), target);
      if (!copied) {
        if (!view.faults().isEmpty()) {
          throw wrong("not made yet: look at what is marked");
        }
        new NewFile(target).write(Draft.of(view.answers(), target));
      }
      begun.accept(target);
      return Reply.html(new Html().leaf("div", "", "id", "begun").done());
    } catch (InvalidInput wrong) {
      Html html = new Html();
      html.open("div", "id", "said");
      wrong.faults().forEach(fault -> html.leaf("p", fault.message(), "class", "fault"));
      return Reply.html(html.close().done() + view.html(false));
    }
  }

  private Path named(String name) {
    if (!name.matches("[A-Za-z0-9][A-Za-z0-9 _-]{0,60}\\.ya?ml")) {
      throw wrong(
          "the file's name has letters, digits, blanks and dashes and ends in .yaml, for example "
              + USUAL_NAME);
    }
    return folder.resolve(name);
  }

  private static InvalidInput wrong(String message) {
    return new InvalidInput(Place.whole("page"), message);
  }

  private StartView view(Asked asked) {
    Answers answers = Answers.NONE;
    for (Question question : Questions.all()) {
      String answer = asked.text(question.key()).strip();
      if (!answer.isEmpty()) {
        answers = answers.with(question.key(), answer);
      }
    }
    String width = asked.text("width");
    return new StartView(
        new Interview(file.orElse(folder.resolve(USUAL_NAME))),
        answers,
        asked.find("file name").orElse(USUAL_NAME),
        file.isPresent(),
        width.matches("\\d{1,4}") ? Integer.parseInt(width) : USUAL_WIDTH);
  }
}
