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
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.Main;
import rillwright.cli.command.Run;

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

  /** So many draws hold every command. */
  private static final int ENOUGH = 3000;

  /** Tested on its own: of a right project it would not end. */
  private static final String SERVES_UNTIL_IT_IS_ENDED = "page";

  /** After so many there is enough to mend. */
  private static final int MOST_SHOWN = 12;

  @TempDir private Path folder;

  @Test
  void endInAnAnswerOrASentence() throws IOException {
    FuzzCases cases = FuzzCases.of(EXAMPLES, folder);
    List<String> wrong = new ArrayList<>();
    int answers = 0;
    for (int i = 0; i < CASES && wrong.size() < MOST_SHOWN; i++) {
      FuzzCase drawn = cases.draw(new Draw(SEED * 1_000_003 + i));
      Path file = drawn.file();
      Files.write(file, drawn.bytes());
      OrderlyRun.clear(file, text -> {});
      try {
        Run run = patiently(() -> OrderlyRun.of(file.getParent(), drawn.command()));
        answers += run.status() == 0 ? 1 : 0;
        OrderlyRun.clear(file, text -> {});
      } catch (Error e) {
        String text = new String(drawn.bytes(), StandardCharsets.UTF_8);
        wrong.add("seed " + SEED + ", case " + i + ", " + drawn.command() + ": " + e + "\n" + text);
      }
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

  /** Projects, sheets, answers, readings and words: between them all commands are tried. */
  @Test
  void noCommandIsForgotten() throws IOException {
    FuzzCases cases = FuzzCases.of(EXAMPLES, folder);
    Set<String> tried = new TreeSet<>();
    for (int i = 0; i < ENOUGH; i++) {
      tried.add(cases.draw(new Draw(i)).command().get(0));
    }
    tried.add(SERVES_UNTIL_IT_IS_ENDED);
    assertEquals(new TreeSet<>(Main.commandLine().getSubcommands().keySet()), tried);
  }
}
