package rillwright.cli.examples;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.command.Run;

/**
 * Whatever is done to an example file, {@code solve} ends with an answer or with a sentence: never
 * a defect, never a number that is none, never without end.
 */
class MutatedExamplesTest {
  private static final int FILES_A_SEED = Integer.getInteger("rillwright.files", 250);

  /** As a value, not as a piece of a title that a mutation has spelt so. */
  private static final Pattern NO_NUMBER = Pattern.compile(": \"?-?(NaN|Infinity)\"?[,\\n]");

  private static final Set<Integer> ORDERLY = Set.of(0, 2, 3);
  private static final List<String> STRANGE =
      List.of(
          "0", "-1", "1e300", "NaN", ".inf", "1/0", "-0", "1e-300", "%", "ft", "null", "\t", "{",
          "]", ":", "\u0000", "no");

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void endInAnAnswerOrASentence(long seed, @TempDir Path folder) throws IOException {
    List<Path> examples = examplesIn(folder);
    SplittableRandom random = new SplittableRandom(seed);
    int answers = 0;
    for (int i = 0; i < FILES_A_SEED; i++) {
      Path example = examples.get(random.nextInt(examples.size()));
      String text = mutated(Files.readString(example), random);
      Path file = example.resolveSibling("mutated.yaml");
      Files.write(file, text.getBytes(StandardCharsets.UTF_8));
      String which =
          "seed " + seed + ", file " + i + " from " + example.getFileName() + "\n" + text;
      answers += solve(file, which) == 0 ? 1 : 0;
    }
    // Else the mutations destroy everything and nothing behind the reader is tried.
    assertTrue(answers > FILES_A_SEED / 20, answers + " answers, seed " + seed);
  }

  private static int solve(Path file, String which) {
    Run run =
        assertTimeoutPreemptively(
            Duration.ofSeconds(30),
            () -> Run.of("solve", file.toString(), "--format", "json"),
            which);
    assertTrue(ORDERLY.contains(run.status()), () -> run + which);
    assertFalse(NO_NUMBER.matcher(run.out()).find(), which);
    assertFalse(run.err().contains("\tat "), () -> run.err() + which);
    assertTrue(run.status() == 0 || !run.err().isBlank(), which);
    return run.status();
  }

  private static List<Path> examplesIn(Path folder) throws IOException {
    List<Path> examples = new ArrayList<>();
    for (Path example : ExampleFolders.list()) {
      Path copy = Files.createDirectories(folder.resolve(example.getFileName().toString()));
      try (Stream<Path> files = Files.walk(example)) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          Path target = copy.resolve(example.relativize(file).toString());
          Files.createDirectories(target.getParent());
          Files.copy(file, target);
          if (file.toString().endsWith(".yaml")) {
            examples.add(target);
          }
        }
      }
    }
    return examples;
  }

  /**
   * One to three changes: a stretch cut out, doubled, exchanged for something strange, or a digit
   * changed.
   */
  private static String mutated(String text, SplittableRandom random) {
    StringBuilder changed = new StringBuilder(text);
    int changes = 1 + random.nextInt(3);
    for (int i = 0; i < changes && !changed.isEmpty(); i++) {
      int from = random.nextInt(changed.length());
      int to = Math.min(changed.length(), from + 1 + random.nextInt(12));
      switch (random.nextInt(5)) {
        case 0 -> changed.delete(from, to);
        case 1 -> changed.insert(from, changed.substring(from, to));
        case 2 -> changed.replace(from, to, STRANGE.get(random.nextInt(STRANGE.size())));
        case 3 -> swapLines(changed, random);
        default -> changeADigit(changed, from, random);
      }
    }
    return changed.toString();
  }

  private static void changeADigit(StringBuilder text, int from, SplittableRandom random) {
    for (int at = from; at < text.length(); at++) {
      if (Character.isDigit(text.charAt(at))) {
        text.setCharAt(at, (char) ('0' + random.nextInt(10)));
        return;
      }
    }
  }

  private static void swapLines(StringBuilder text, SplittableRandom random) {
    List<String> lines = new ArrayList<>(text.toString().lines().toList());
    if (lines.size() > 1) {
      int at = random.nextInt(lines.size() - 1);
      lines.add(at, lines.remove(at + 1));
      text.setLength(0);
      text.append(String.join("\n", lines)).append('\n');
    }
  }
}
