package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rillwright.cli.command.Run;
import rillwright.curves.wording.PlainText;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.ObjectMapper;

/**
 * Runs commands in a folder and holds what every run of every command must keep, whatever its files
 * say: an exit status from 0 to 3, an answer or sentences and never both, no trace of the program's
 * inside, no number that is none, JSON that is JSON, nothing that moves a cursor, and no file
 * altered or left behind but the picture that was asked for.
 */
final class OrderlyRun {
  private static final Set<Integer> ORDERLY = Set.of(0, 1, 2, 3);
  static final Pattern NO_NUMBER = Pattern.compile("(?<![\\w\"])-?(NaN|Infinity|∞)(?!\\w)");

  /** What {@code odds} says beside its answer. */
  private static final Pattern SPEED = Pattern.compile(".* solves a second\\R");

  private static final List<String> INSIDES =
      List.of("\tat ", "Exception", "a defect in the program", "Optional[", "java.");

  private final Path folder;
  private final String[] arguments;

  private OrderlyRun(Path folder, String[] arguments) {
    this.folder = folder;
    this.arguments = arguments;
  }

  /**
   * Runs a command.
   *
   * @param folder where its files lie
   * @throws AssertionError if anything that must hold does not
   */
  static Run of(Path folder, List<String> arguments) {
    return new OrderlyRun(folder, arguments.toArray(String[]::new)).run();
  }

  private Run run() {
    Map<Path, ByteBuffer> before = files();
    Run run = Run.of(arguments);
    Map<Path, ByteBuffer> after = files();
    int status = run.status();
    String what = String.join(" ", arguments) + " ended with " + status + "\n" + run.err();
    assertTrue(ORDERLY.contains(status), what);
    assertTrue(status != 1 || List.of(arguments).contains("--strict"), what);
    boolean isAnswer = status < 2 || (status == 3 && !run.out().isEmpty()); // in conditions
    assertEquals(isAnswer, SPEED.matcher(run.err()).replaceAll("").isEmpty(), what);
    assertEquals(isAnswer, !run.out().isEmpty(), what + run.out());
    INSIDES.forEach(word -> assertFalse(run.err().contains(word), what));
    assertHarmless(run.err(), what);
    if (isAnswer) {
      assertAnswer(run.out(), what);
    }
    after.keySet().removeIf(path -> isPicture(path) && isAnswer && !before.containsKey(path));
    assertEquals(before, after, what);
    return run;
  }

  private void assertAnswer(String out, String what) {
    if (List.of(arguments).contains("json")) {
      try {
        new ObjectMapper().readTree(out);
      } catch (JacksonException e) {
        throw new AssertionError(what + out, e);
      }
    } else {
      assertHarmless(out, what);
    }
    assertFalse(NO_NUMBER.matcher(out).find(), () -> what + out);
  }

  /** No control, format or other character that is not to be printed, but for ends of lines. */
  private static void assertHarmless(String text, String what) {
    text.lines().forEach(line -> assertEquals(PlainText.harmless(line), line, what));
  }

  static boolean isPicture(Path path) {
    String name = path.toString().toLowerCase(Locale.ROOT);
    return name.endsWith(".svg") || name.endsWith(".png");
  }

  private Map<Path, ByteBuffer> files() {
    try (Stream<Path> all = Files.walk(folder)) {
      Map<Path, ByteBuffer> files = new TreeMap<>();
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(file, ByteBuffer.wrap(Files.readAllBytes(file)));
      }
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
