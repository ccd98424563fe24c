package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.command.Rillwright;
import rillwright.cli.command.Run;

/** What the README shows works as it is written there. */
class ReadmeTest {
  private static final Path README = Path.of("..", "README.md");

  @Test
  void itsFirstFileIsSolved(@TempDir Path folder) throws IOException {
    String readme = Files.readString(README);
    int from = readme.indexOf("```yaml") + "```yaml\n".length();
    Path file = folder.resolve("pond.yaml");
    Files.writeString(file, readme.substring(from, readme.indexOf("```", from)));

    Run run = Run.of("solve", file.toString());

    assertEquals("", run.err());
    assertEquals(0, run.status());
    assertTrue(run.out().contains("upper fall"), run.out());
  }

  @Test
  void whatItLinksToIsThere() throws IOException {
    Matcher links = Pattern.compile("]\\(([^)]+)\\)").matcher(Files.readString(README));
    int count = 0;
    while (links.find()) {
      Path target = README.resolveSibling(links.group(1));
      assertTrue(Files.exists(target), target.toString());
      count++;
    }
    assertTrue(count > 5, count + " links");
  }

  /** Its commands are taken by the program, with the files that they name. */
  @Test
  void itsCommandsAreTaken() throws IOException {
    String readme = Files.readString(README).replace("\\\n", " ");
    Matcher commands = Pattern.compile("(?m)^rillwright (.*)$").matcher(readme);
    int count = 0;
    while (commands.find()) {
      String[] words =
          Pattern.compile("\"[^\"]*\"|\\S+")
              .matcher(commands.group(1))
              .results()
              .map(word -> word.group().replace("\"", ""))
              .toArray(String[]::new);
      Main.commandLine().parseArgs(words);
      for (String word : words) {
        assertTrue(!word.startsWith("examples/") || Files.exists(Path.of("..", word)), word);
      }
      count++;
    }
    assertTrue(count > 2, count + " commands");
  }

  @Test
  void itNamesEveryCommandAndEveryTopicOfHelp() throws IOException {
    String readme = Files.readString(README);
    List<String> words = new ArrayList<>(Rillwright.listShown(Main.commandLine().getCommandSpec()));
    Run.of("help")
        .out()
        .lines()
        .filter(line -> line.matches("  [a-z]+  .*"))
        .forEach(line -> words.add(line.strip().split(" ", 2)[0]));
    List<String> missing =
        words.stream().filter(word -> !readme.matches("(?s).*`" + word + "[` ].*")).toList();
    assertTrue(words.size() > 25, words::toString);
    assertEquals(List.of(), missing);
  }
}
