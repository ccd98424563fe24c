package rillwright.cli.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.cli.command.Run;

/** The examples' answers as pages. */
public final class ExamplePages {
  private ExamplePages() {}

  /** A command line of an example without its format. */
  public record Page(Path folder, String command) {
    /** The page itself; of odds with few samples, as many look the same. */
    public String html() {
      List<String> words = new ArrayList<>(CommandWords.of(command, folder));
      words.addAll(List.of("--format", "html"));
      if (words.contains("odds") && !words.contains("--samples")) {
        words.addAll(List.of("--samples", "200"));
      }
      Run run = Run.of(words.toArray(String[]::new));
      assertEquals(0, run.status(), run::err);
      return run.out();
    }

    @Override
    public String toString() {
      return folder.getFileName() + ": " + command;
    }
  }

  /** The first of each command with the same options. */
  public static List<Page> firsts() throws IOException {
    Map<String, Page> firsts = new LinkedHashMap<>();
    for (Page page : list()) {
      String options =
          Arrays.stream(page.command().split(" "))
              .filter(word -> word.startsWith("--"))
              .collect(Collectors.joining(" "));
      firsts.putIfAbsent(page.command().split(" ")[0] + " " + options, page);
    }
    return List.copyOf(firsts.values());
  }

  /** One of each command line that has a page. */
  public static List<Page> list() throws IOException {
    Set<Page> pages = new LinkedHashSet<>();
    for (ExamplesTest.Run run : ExamplesTest.runs()) {
      if (!run.command().matches("(chart|section) .*")) {
        pages.add(new Page(run.folder(), run.command().replaceAll(" --format \\S+", "")));
      }
    }
    return List.copyOf(pages);
  }
}
