package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.command.Run;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Every command on example files and drawn projects, whole and damaged: each ends with an answer or
 * a sentence, as {@link OrderlyRun} holds. {@code -Drillwright.cases=20000} tries more of them,
 * {@code -Drillwright.seed=2} others.
 */
class EveryCommandFuzzTest {
  private static final int CASES = Integer.getInteger("rillwright.cases", 80);
  private static final long SEED = Long.getLong("rillwright.seed", 1);
  private static final Path EXAMPLES = Path.of("..", "examples");

  private static final OperatingSystemMXBean MACHINE =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
  private static final long MOST_NS = TimeUnit.MINUTES.toNanos(2);

  /** After so many there is enough to mend. */
  private static final int MOST_SHOWN = 12;

  @TempDir private Path folder;

  /** A project's text, and a line of it. */
  private record Base(String text, String line) {
    static Base of(Map<String, Object> tree, String text, Draw draw) {
      return new Base(text, draw.oneOf(ProjectTree.linesWith("run", tree)));
    }
  }

  @Test
  void endInAnAnswerOrASentence() throws IOException {
    List<Path> examples = copied();
    List<String> wrong = new ArrayList<>();
    int answers = 0;
    for (int i = 0; i < CASES && wrong.size() < MOST_SHOWN; i++) {
      Draw draw = new Draw(SEED * 1_000_003 + i);
      Path file = draw.oneOf(examples).resolveSibling("tried.yaml");
      Base base = draw.chance(0.5) ? drawn(draw) : example(draw.oneOf(examples), draw);
      Path home = file.getParent();
      Files.write(
          file,
          draw.chance(0.75)
              ? new Damage(draw).of(base.text())
              : base.text().getBytes(StandardCharsets.UTF_8));
      List<String> command = command(file, base.line(), draw);
      try {
        Run run = patiently(() -> OrderlyRun.of(home, command));
        answers += run.status() == 0 ? 1 : 0;
      } catch (Error e) {
        String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        wrong.add("seed " + SEED + ", case " + i + ", " + command + ": " + e + "\n" + text);
      }
      removePictures(home);
    }
    assertEquals(List.of(), wrong, () -> String.join("\n\n", wrong));
    // Else the damage destroys everything and nothing behind the reader is tried.
    assertTrue(answers > CASES / 20, answers + " answers");
  }

  /** A run of at most so much processor time of all threads, however busy the machine is. */
  private static Run patiently(Callable<Run> run) {
    ExecutorService alone = Executors.newSingleThreadExecutor();
    try {
      Future<Run> ending = alone.submit(run);
      for (long end = MACHINE.getProcessCpuTime() + MOST_NS; ; ) {
        try {
          return ending.get(1, TimeUnit.SECONDS);
        } catch (TimeoutException notYet) {
          assertTrue(MACHINE.getProcessCpuTime() < end, "it takes more than two minutes");
        }
      }
    } catch (ExecutionException | InterruptedException e) {
      throw e.getCause() instanceof Error wrong ? wrong : new AssertionError(e);
    } finally {
      alone.shutdownNow();
    }
  }

  private static Base drawn(Draw draw) {
    Map<String, Object> tree = RandomProject.of(draw.below(Integer.MAX_VALUE));
    String text = draw.chance(0.2) ? ProjectTree.json(tree) : ProjectTree.yaml(tree);
    return Base.of(tree, text, draw);
  }

  @SuppressWarnings("unchecked")
  private static Base example(Path file, Draw draw) throws IOException {
    String text = Files.readString(file);
    return Base.of(new YAMLMapper().readValue(text, Map.class), text, draw);
  }

  private static List<String> command(Path file, String line, Draw draw) {
    String sheets = EXAMPLES.resolve("long-stream").resolve("supplier").toString();
    List<String> command =
        new ArrayList<>(draw.oneOf(new EveryCommand(file.toString(), line, sheets).list()));
    if (draw.chance(0.1)) {
      command.add("--set");
      command.add(
          "lines."
              + line
              + "."
              + draw.oneOf(
                  List.of(
                      "run=0 m",
                      "pipe.inside=1 mm",
                      "valve.open=0 %",
                      "run=1e9 ft",
                      "pump=to be chosen",
                      "pump.speed=200 %",
                      "parts=x")));
    }
    return command;
  }

  private List<Path> copied() throws IOException {
    List<Path> examples = new ArrayList<>();
    try (Stream<Path> files = Files.walk(EXAMPLES)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        Path copy = folder.resolve(EXAMPLES.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else if (name.endsWith(".yaml") || name.endsWith(".csv")) {
          Files.copy(file, copy);
          if (Files.readString(copy).contains("\nlines:")) {
            examples.add(copy);
          }
        }
      }
    }
    return examples;
  }

  private static void removePictures(Path home) throws IOException {
    try (Stream<Path> files = Files.list(home)) {
      for (Path file : files.filter(OrderlyRun::isPicture).toList()) {
        Files.delete(file);
      }
    }
  }
}
