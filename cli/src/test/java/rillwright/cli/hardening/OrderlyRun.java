package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rillwright.cli.command.Run;
import rillwright.curves.wording.PlainText;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.ObjectMapper;

/**
 * Runs commands in a folder and holds what every run of every command must keep, whatever its files
 * say: an exit status from 0 to 3, an answer or sentences and never both, no trace of the program's
 * inside, no number that is none, JSON that is JSON, nothing that moves a cursor, no script in a
 * page or a picture, and no file altered or left behind but what was asked for.
 */
final class OrderlyRun {
  private static final Set<Integer> ORDERLY = Set.of(0, 1, 2, 3);
  static final Pattern NO_NUMBER = Pattern.compile("(?<![\\w\"])-?(NaN|Infinity|∞)(?!\\w)");

  /** What {@code odds} says beside its answer. */
  private static final Pattern SPEED = Pattern.compile(".* solves a second\\R");

  private static final List<String> INSIDES =
      List.of("\tat ", "Exception", "a defect in the program", "Optional[", "java.");

  /** So many letters before it tell where something was written. */
  private static final int QUOTED = 12;

  private static final String MADE = "made";

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
      assertAnswer(run.out(), what, before.values());
    }
    if (isAnswer) {
      after.keySet().removeIf(path -> isMade(path) && !before.containsKey(path));
    }
    assertEquals(before.keySet(), after.keySet(), what);
    assertEquals(before, after, what);
    return run;
  }

  /** Where commands that are asked of a file write what they make, and nothing else lies. */
  static Path made(Path file) {
    return file.resolveSibling(MADE);
  }

  /** Looks at what was made beside a file, and takes it away. */
  static void clear(Path file, Consumer<String> look) {
    try (Stream<Path> files = Files.list(Files.createDirectories(made(file)))) {
      for (Path it : files.toList()) {
        String text = Files.readString(it);
        if (!it.endsWith(EveryCommand.AS_BUILT)) { // the user's own file again, byte for byte
          assertHarmless(text, it.toString());
        }
        assertFalse(text.toLowerCase(Locale.ROOT).contains("<script"), it + text);
        look.accept(text);
        Files.delete(it);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static boolean isMade(Path path) {
    return path.getParent().endsWith(MADE);
  }

  private void assertAnswer(String out, String what, Collection<ByteBuffer> files) {
    if (List.of(arguments).contains("json")) {
      try {
        new ObjectMapper().readTree(out);
      } catch (JacksonException e) {
        throw new AssertionError(what + out, e);
      }
    } else {
      assertHarmless(out, what);
      assertFalse(List.of(arguments).contains("html") && out.contains("<script"), what + out);
    }
    NO_NUMBER
        .matcher(out)
        .results()
        .filter(it -> !isQuoted(out.substring(Math.max(0, it.start() - QUOTED), it.end()), files))
        .forEach(it -> fail(what + out));
  }

  /** What a comment of a file says is shown as it says it, but for a letter that begins a line. */
  private static boolean isQuoted(String words, Collection<ByteBuffer> files) {
    String quoted = words.substring(words.lastIndexOf('>') + 1).toLowerCase(Locale.ROOT);
    return files.stream()
        .map(file -> StandardCharsets.UTF_8.decode(file.duplicate()).toString())
        .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(quoted));
  }

  /** No control, format or other character that is not to be printed, but for ends of lines. */
  private static void assertHarmless(String text, String what) {
    text.lines().forEach(line -> assertEquals(PlainText.harmless(line), line, what));
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
