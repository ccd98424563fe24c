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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words that the project gave up stay out of all that a user reads. */
class RetiredWordsTest {
  private static final Path TOP = Path.of("..");

  private static final Pattern RETIRED =
      Pattern.compile(
          "\\b(wish(es|ed)?|reckon\\w*|told|gulps?|drinks?|worst off|(belongs?|belong) here|buys"
              + " flow|more comes out than goes in|four fifths|does it|does it not|lift at no"
              + " flow|what to know|what matters|home by)\\b|THESE DO|The file is right",
          Pattern.CASE_INSENSITIVE);

  /** A sample's name is a letter and a number: words could be a maker's or a town's. */
  private static final Pattern SAMPLE_NAMES =
      Pattern.compile(
          "\\b(otter|dipper|heron|kestrel|wren|marl|tern|brook|alder|fern|kingfisher)([-"
              + " _]\\w+)?\\b",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern COMMENT =
      Pattern.compile("/\\*.*?\\*/|(?m)^\\s*//.*$", Pattern.DOTALL);
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");

  @Test
  void noMessageHasOne() throws IOException {
    List<String> found = new ArrayList<>();
    for (String module : List.of("solver", "curves", "cli")) {
      for (Path file : files(TOP.resolve(module + "/src/main/java"), ".java")) {
        Matcher literal = LITERAL.matcher(COMMENT.matcher(Files.readString(file)).replaceAll(""));
        while (literal.find()) {
          if (literal.group(1).contains(" ")) {
            found.addAll(in(file, literal.group(1)));
          }
        }
      }
    }
    assertEquals(List.of(), found);
  }

  @Test
  void noGoldenFileExampleOrReadmeHasOne() throws IOException {
    List<Path> files = new ArrayList<>(List.of(TOP.resolve("README.md")));
    for (String ending : List.of(".txt", ".yaml", ".csv")) {
      files.addAll(files(TOP.resolve("examples"), ending));
    }
    List<String> found = new ArrayList<>();
    for (Path file : files) {
      found.addAll(in(file, Files.readString(file)));
    }
    assertEquals(List.of(), found);
  }

  @Test
  void samplesHaveNamesOfALetterAndANumber() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : textFiles()) {
      found.addAll(in(SAMPLE_NAMES, file, file.getFileName().toString()));
      if (!file.endsWith("RetiredWordsTest.java")) {
        found.addAll(in(SAMPLE_NAMES, file, Files.readString(file)));
      }
    }
    assertEquals(List.of(), found);
  }

  @ParameterizedTest
  @ValueSource(strings = {"pump: heron 380", "pumps/otter-600.csv", "Alder Bend"})
  void plantedSampleNameIsFound(String sample) {
    assertEquals(1, in(SAMPLE_NAMES, TOP, sample).size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "It is told here.",
        "the pump gulps air",
        "this pump does it",
        "a wish",
        "Reckoned"
      })
  void plantedOneIsFound(String sentence) {
    assertTrue(in(TOP, sentence).size() == 1, sentence);
  }

  @ParameterizedTest
  @ValueSource(strings = {"It meets the target.", "the pump draws air", "how much it does"})
  void plainSentenceIsNot(String sentence) {
    assertEquals(List.of(), in(TOP, sentence));
  }

  private static List<String> in(Path file, String text) {
    return in(RETIRED, file, text);
  }

  private static List<String> in(Pattern pattern, Path file, String text) {
    return pattern.matcher(text).results().map(it -> file + ": " + it.group()).toList();
  }

  private static List<Path> textFiles() throws IOException {
    List<Path> files =
        new ArrayList<>(List.of(TOP.resolve("README.md"), TOP.resolve("DEVELOPERS.md")));
    for (String folder : List.of("solver/src", "curves/src", "cli/src", "examples")) {
      for (String ending : List.of(".java", ".yaml", ".csv", ".txt", ".json", ".html")) {
        files.addAll(filesIfAny(TOP.resolve(folder), ending));
      }
    }
    return files;
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    List<Path> files = filesIfAny(folder, ending);
    assertTrue(!files.isEmpty(), folder + " has files " + ending);
    return files;
  }

  private static List<Path> filesIfAny(Path folder, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }
}
