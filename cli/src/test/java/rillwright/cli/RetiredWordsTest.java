package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
              + " flow|more comes out than goes in|four fifths|does it|lift at no flow|what to"
              + " know|what matters|home (by|to)|last day|since weeks|sold too small|say what to"
              + " do|is no format|tells nobody|keeps? it safe|accept between|base case|takes?"
              + " in air|spread comes from|licensed practice|B less A|less than shown|adds flow,"
              + " saves|five years on|hose under the pressure|one part in a"
              + " billion|more reduces by|stop the job|changed for this answer|lead all the"
              + " water|(at|of|leaves) the lip|under target accepted|automatic fill or|in velocity"
              + " heads about)\\b|THESE DO|The file is right",
          Pattern.CASE_INSENSITIVE);

  /** Names of earlier versions that stay readable stand where they are read, and in their tests. */
  private static final Map<String, String> FORMER =
      Map.of(
          "FormerOptions.java", "wish",
          "FormerNames.java", "since weeks",
          "FormerOptionsTest.java", "wish",
          "WeakCausesTest.java", "since weeks");

  /** A sample's name is a letter and a number: words could be a maker's or a town's. */
  private static final Pattern SAMPLE_NAMES =
      Pattern.compile(
          "\\b(otter|dipper|heron|kestrel|wren|marl|tern|brook|alder|fern|kingfisher)([-"
              + " _]\\w+)?\\b",
          Pattern.CASE_INSENSITIVE);

  /** Blanks, and what stands between the words of a comment or of a text in several pieces. */
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s*/+\"]+|(?<=[a-z])(?=[A-Z])");

  /** Messages, comments, names, tests, help, schemas, tables, examples and their answers. */
  @Test
  void nothingThatIsReadHasOne() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : textFiles()) {
      if (!file.endsWith("RetiredWordsTest.java")) {
        found.addAll(in(file, Files.readString(file)));
      }
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
        "Run it for the warnings of the base case.",
        "A pump that takes in\n air surges.",
        "B less A",
        "a degree more reduces by",
        "Reckoned",
        "void whatIsTold() {}",
        " * the fall that is worst\n * off",
        "\"the pump that does\"\n    + \" it\""
      })
  void plantedOneIsFound(String sentence) {
    assertTrue(in(TOP, sentence).size() == 1, sentence);
  }

  @ParameterizedTest
  @ValueSource(strings = {"It meets the target.", "the pump draws air", "how much it does"})
  void plainSentenceIsNot(String sentence) {
    assertEquals(List.of(), in(TOP, sentence));
  }

  @Test
  void aFormerNameIsLeftWhereItIsReadAndNowhereElse() {
    Path reads = TOP.resolve("FormerOptions.java");
    assertEquals(List.of(), in(reads, "\"--wish\", \"--target\","));
    assertEquals(1, in(reads, "as somebody told").size());
    assertEquals(1, in(TOP.resolve("Other.java"), "\"--wish\"").size());
  }

  private static List<String> in(Path file, String text) {
    String words = BETWEEN_WORDS.matcher(text).replaceAll(" ");
    String former = FORMER.getOrDefault(file.getFileName().toString(), "");
    return in(RETIRED, file, words).stream()
        .filter(hit -> former.isEmpty() || !hit.endsWith(": " + former))
        .toList();
  }

  private static List<String> in(Pattern pattern, Path file, String text) {
    return pattern.matcher(text).results().map(it -> file + ": " + it.group()).toList();
  }

  private static List<Path> textFiles() throws IOException {
    List<Path> files =
        new ArrayList<>(List.of(TOP.resolve("README.md"), TOP.resolve("DEVELOPERS.md")));
    for (String folder : List.of("solver/src", "curves/src", "cli/src", "examples")) {
      for (String ending : List.of(".java", ".yaml", ".csv", ".txt", ".json", ".html", ".css")) {
        files.addAll(files(TOP.resolve(folder), ending));
      }
    }
    return files;
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }
}
