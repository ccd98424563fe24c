package rillwright.cli.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each example's commands give the output that lies beside them. With {@code
 * -Drillwright.rewrite=true} the output is written anew instead, to be read like code.
 */
class ExamplesTest {
  /** How fast it went, which is never the same. */
  private static final Pattern EFFORT = Pattern.compile(".* solves a second\\R");

  private static final boolean REWRITE = Boolean.getBoolean("rillwright.rewrite");

  /** One line of {@code commands.txt}: a command and the file that holds what it prints. */
  record Run(Path folder, String command, String outputFile) {
    @Override
    public String toString() {
      return folder.getFileName() + ": " + command;
    }
  }

  static List<Run> runs() throws IOException {
    List<Run> runs = new ArrayList<>();
    for (Path folder : ExampleFolders.list()) {
      for (String line : Files.readAllLines(folder.resolve("commands.txt"))) {
        String[] sides = line.split(" > ", -1);
        if (!line.isBlank() && !line.startsWith("#")) {
          runs.add(new Run(folder, sides[0].strip(), sides[1].strip()));
        }
      }
    }
    return runs;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("runs")
  void printsWhatLiesBesideIt(Run run) throws IOException {
    var ran =
        rillwright.cli.command.Run.of(
            CommandWords.of(run.command(), run.folder()).toArray(new String[0]));

    assertEquals("", EFFORT.matcher(ran.err()).replaceAll(""));
    assertEquals(0, ran.status());
    Path expected = run.folder().resolve(run.outputFile());
    if (REWRITE) {
      Files.writeString(expected, ran.out());
    }
    if (run.outputFile().endsWith(".json")) {
      JsonLikeness.assertAlike(Files.readString(expected), ran.out());
    } else {
      assertEquals(Files.readString(expected), ran.out());
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("runs")
  void namesNoFolderOfTheMachine(Run run) throws IOException {
    String text = Files.readString(run.folder().resolve(run.outputFile()));

    assertFalse(text.contains(run.folder().toAbsolutePath().normalize().toString()));
  }
}
