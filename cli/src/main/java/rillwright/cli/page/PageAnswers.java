package rillwright.cli.page;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Function;
import rillwright.cli.file.Project;
import rillwright.cli.file.Show;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.page.desk.Desk;
import rillwright.cli.page.desk.Outcomes;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.Panels;
import rillwright.cli.page.panel.form.Filled;
import rillwright.cli.page.view.FieldBook;
import rillwright.cli.page.view.Scene;
import rillwright.cli.page.view.Shell;
import rillwright.cli.page.web.Asked;
import rillwright.cli.page.web.Asked.Method;
import rillwright.cli.page.web.Reply;

/** What the page of a job answers: to look changes nothing, to change something is posted. */
final class PageAnswers implements Function<Asked, Reply> {
  private static final int USUAL_WIDTH = 360;

  private final Desk desk;
  private final FieldBook book;
  private final Outcomes outcomes = new Outcomes();

  private final Panels panels;

  /** The page of the state in which the job was opened, made while the browser starts. */
  private final CompletableFuture<String> first;

  private final String firstState;

  private PageAnswers(Desk desk, FieldBook book, Consumer<RuntimeException> defects) {
    this.desk = desk;
    this.book = book;
    this.panels = new Panels(desk.folder(), defects);
    Scene usual = scene(new Asked(Method.GET, "", Map.of()));
    this.firstState = desk.state();
    this.first = CompletableFuture.supplyAsync(usual::first);
  }

  /**
   * Of the job in a file.
   *
   * @param defects receives what should never happen
   * @throws InvalidInput if it cannot be read or something is wrong in it
   */
  static PageAnswers open(Path file, Consumer<RuntimeException> defects) {
    CompletableFuture<FieldBook> book = CompletableFuture.supplyAsync(FieldBook::new);
    return new PageAnswers(Desk.open(file), book.join(), defects);
  }

  @Override
  public Reply apply(Asked asked) {
    try {
      return asked.method() == Method.GET ? look(asked) : post(asked);
    } catch (InvalidInput wrong) {
      Html html = new Html();
      html.open("div", "id", "said");
      for (Fault fault : wrong.faults()) {
        html.leaf("p", fault.message(), "class", "fault");
      }
      return Reply.html(html.close().done() + scene(asked).whole());
    }
  }

  private Reply look(Asked asked) {
    return switch (asked.path()) {
      case "" -> Reply.html(Shell.of(desk.sound().title(), first(asked)));
      case "state" -> state(asked);
      case "pieces" -> Reply.html(scene(asked).whole());
      case "sheet", "materials.csv", "readings.yaml" ->
          Papers.of(asked, scene(asked).project(), desk.folder());
      case "work" -> Reply.html(panels.soFar(asked.text("panel")));
      default -> Reply.refused("there is no such piece of the page");
    };
  }

  private String first(Asked asked) {
    boolean isMade = asked.fields().isEmpty() && desk.state().equals(firstState);
    return isMade ? first.join() : scene(asked).first();
  }

  /** Everything anew for a page that has not seen the last change. */
  private Reply state(Asked asked) {
    boolean same = asked.text("seen").equals(desk.state());
    return Reply.html(same ? "" : scene(asked).whole());
  }

  private Reply post(Asked asked) {
    if (asked.path().equals("try")) {
      return Reply.html(scene(asked).tried(asked.text("at") + "=" + asked.text("value")));
    }
    if (asked.path().equals("ask")) {
      return panel(asked);
    }
    if (asked.path().equals("stop")) {
      panels.stop(asked.text("panel"));
      return Reply.html("");
    }
    if (!asked.path().equals("do")) {
      return Reply.refused("there is nothing of this name to be done");
    }
    if (!asked.text("seen").equals(Integer.toString(desk.number()))) {
      throw Doing.wrong("not done: another page has changed the job meanwhile; look at it first");
    }
    Project before = desk.sound();
    Doing.of(desk, asked);
    return Reply.html(scene(asked).whole(before));
  }

  private Reply panel(Asked asked) {
    Project project = scene(asked).project();
    return panels
        .ask(asked.text("panel"), project, new Filled(asked.fields()))
        .map(Reply::html)
        .orElseGet(() -> Reply.refused("there is no such panel"));
  }

  private Scene scene(Asked asked) {
    Optional<Show> units =
        switch (asked.text("units")) {
          case "us" -> Optional.of(Show.US);
          case "metric" -> Optional.of(Show.METRIC);
          default -> Optional.empty();
        };
    return new Scene(desk, book, outcomes, panels, units, width(asked.text("width")));
  }

  private static int width(String text) {
    return text.matches("\\d{1,4}") ? Integer.parseInt(text) : USUAL_WIDTH;
  }
}
