package rillwright.cli.command.help;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.UsageMessageSpec;
import rillwright.cli.Main;
import rillwright.cli.command.Run;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;

class HelpCommandTest {
  @ParameterizedTest
  @EnumSource
  void eachTopicIsAPage(Topic topic) {
    Run text = Run.of("help", topic.word());
    Run html = Run.of("help", topic.word(), "--format", "html");
    assertEquals("", text.err() + html.err());
    assertTrue(text.out().startsWith(topic.title() + "\n=="), text.out());
    assertTrue(text.out().lines().allMatch(line -> line.length() <= 110), text.out());
    assertTrue(html.out().contains("<h1>"), html.out());
    assertTrue(Run.of("help").out().contains(topic.word() + "  "), topic.word());
  }

  /** Samples can be read: those of files as YAML, those of commands by the commands. */
  @ParameterizedTest
  @EnumSource
  void samplesAreRight(Topic topic) {
    for (String sample : samples(topic)) {
      if (sample.startsWith("rillwright ")) {
        for (String command : sample.split("\n", -1)) {
          String[] words =
              command.replaceAll("     .*", "").split(" (?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
          List<String> arguments = new ArrayList<>(List.of(words).subList(1, words.length));
          arguments.replaceAll(word -> word.replace("\"", ""));
          Main.commandLine().parseArgs(arguments.toArray(String[]::new));
        }
      } else if (!sample.startsWith("#")) {
        TreeReader.read(
            new SourceText("sample", sample.startsWith("-") ? "a:\n" + sample : sample));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "wier, '\"rillwright help points\" explains \"weir\"'",
    "weir, '\"rillwright help points\" explains \"weir\"'",
    "skimer, '\"rillwright help parts\" explains \"skimmer\"'",
    "solv, 'did you mean \"solve\"?'",
    "filee, 'did you mean \"file\"?'",
    "qqqqqq, 'choose a command or one of file, '"
  })
  void anUnknownWordIsAnsweredWithWhatExplainsIt(String word, String answer) {
    Run run = Run.of("help", word);
    assertEquals(ExitStatus.WRONG_INPUT, run.status());
    assertTrue(run.err().contains(answer), run.err());
  }

  @ParameterizedTest
  @CsvSource({"solve", "catalogue", "weak"})
  void aCommandsHelpIsItsOwn(String command) {
    assertEquals(Run.of(command, "--help").out(), Run.of("help", command).out());
  }

  /** Else a sign of a percentage is taken for a place to be filled, and a warning is shown. */
  @Test
  void textsOfHelpAreFormats() {
    for (CommandLine command : Main.commandLine().getSubcommands().values()) {
      UsageMessageSpec help = command.getCommandSpec().usageMessage();
      for (String[] lines : List.of(help.description(), help.header(), help.footer())) {
        Stream.of(lines).forEach(line -> assertDoesNotThrow(() -> String.format(line), line));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"reading, readings", "quantitys, quantities", "slove, solve"})
  void aWrongTopicSaysWhatWasMeant(String wrong, String right) {
    Run run = Run.of("help", wrong);
    assertEquals(ExitStatus.WRONG_INPUT, run.status());
    assertTrue(run.err().contains("did you mean \"" + right + "\"?"), run.err());
  }

  @Test
  void everyExitStatusIsExplained() throws IllegalAccessException {
    String page = Run.of("help", "exit").out();
    for (Field status : ExitStatus.class.getFields()) {
      assertTrue(page.contains("- " + status.get(null) + ": "), status.getName());
    }
  }

  private static List<String> samples(Topic topic) {
    List<String> samples = new ArrayList<>();
    StringBuilder sample = new StringBuilder();
    for (String line : topic.lines()) {
      if (line.startsWith("    ")) {
        sample.append(sample.isEmpty() ? "" : "\n").append(line.substring(4));
      } else if (!sample.isEmpty()) {
        samples.add(sample.toString());
        sample.setLength(0);
      }
    }
    return samples;
  }
}
