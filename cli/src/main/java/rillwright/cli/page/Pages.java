package rillwright.cli.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import rillwright.cli.page.start.StartAnswers;
import rillwright.cli.page.web.Asked;
import rillwright.cli.page.web.Asked.Method;
import rillwright.cli.page.web.Reply;
import rillwright.cli.report.page.html.HtmlPage;

/** The page of a job that is there, or that of a new one until it is made. */
public final class Pages implements Function<Asked, Reply> {
  private final Consumer<RuntimeException> defects;
  private volatile Function<Asked, Reply> now;

  private Pages(Consumer<RuntimeException> defects) {
    this.defects = defects;
    this.now = asked -> Reply.refused("the page is not there yet");
  }

  /**
   * The page of a file, or of a new job where none is named or it is not there yet.
   *
   * @param folder in which a new job is made that has no name yet
   * @param defects receives what should never happen
   * @throws rillwright.cli.file.fault.InvalidInput if the file is there and something is wrong
   */
  public static Pages of(Optional<Path> file, Path folder, Consumer<RuntimeException> defects) {
    Pages pages = new Pages(defects);
    if (file.filter(Files::exists).isPresent()) {
      pages.show(file.get());
    } else {
      pages.now = new StartAnswers(folder, file, pages::show);
    }
    return pages;
  }

  private void show(Path file) {
    now = PageAnswers.open(file, defects);
  }

  @Override
  public Reply apply(Asked asked) {
    boolean looks = asked.method() == Method.GET;
    return switch (asked.path()) {
      case "page.css" ->
          looks
              ? Reply.file("text/css", HtmlPage.style() + resource("page.css"))
              : Reply.refused("this is there to be read");
      case "page.js" ->
          looks
              ? Reply.file("text/javascript", resource("page.js"))
              : Reply.refused("this is there to be read");
      default -> now.apply(asked);
    };
  }

  private static String resource(String name) {
    try (InputStream file = Pages.class.getResourceAsStream(name)) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
