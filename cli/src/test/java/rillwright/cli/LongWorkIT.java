package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * What takes long shows at a terminal that it is at work, and Ctrl-C ends it at once: the commands
 * that can take seconds, all side by side on a job larger than any garden.
 */
@EnabledOnOs(OS.LINUX)
class LongWorkIT {
  private static final List<String> COMMANDS =
      List.of(
          "balance large.yaml",
          "weak large.yaml",
          "weak-trial large.yaml",
          "mend large.yaml",
          "pumps large.yaml --from . --conditions",
          "pipes large.yaml --line u1 --sizes 50mm --from . --conditions",
          "asbuilt large.yaml",
          "stream large.yaml --times");

  /** Tees, each with a fall: so many that no command is done within many seconds. */
  private static final int TEES = 400;

  private static final int STREAMS = 40;

  /** What a terminal sends for Ctrl-C. */
  private static final int CTRL_C = 3;

  private static final int INTERRUPTED = 130;

  /** Of signal 2 among those that a process ignores, as Linux lists them. */
  private static final long SIGINT_BIT = 1 << 1;

  /** At once, where nine runs and other tests of the jar share two processors. */
  private static final int END_S = 15;

  @TempDir private Path folder;

  /** A run at a terminal of its own, and the file in which what it shows is kept. */
  private record Shown(String command, Process process, Path screen) {
    String text() throws Exception {
      return Files.readString(screen, StandardCharsets.UTF_8);
    }

    void pressCtrlC() throws Exception {
      OutputStream keys = process.getOutputStream();
      keys.write(CTRL_C);
      keys.flush();
    }

    boolean showsThatItIsAtWork() throws Exception {
      return text().contains("At work for") || text().contains("..] ");
    }
  }

  @Test
  @Timeout(300)
  void showsThatItIsAtWorkAndEndsAtOnceWithCtrlC() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/script")), "no terminal to be had");
    assumeTrue(hearsCtrlC(), "started in the background, where programs do not hear Ctrl-C");
    writeJob();
    List<Shown> runs = new ArrayList<>();
    try {
      for (String command : COMMANDS) {
        runs.add(start(command));
      }
      areAtWorkAndEndAtOnce(runs);
    } finally {
      for (Shown run : runs) {
        run.process.descendants().forEach(ProcessHandle::destroyForcibly);
        run.process.destroyForcibly();
      }
    }
  }

  /** What a shell starts in the background ignores Ctrl-C, and so does all that it starts. */
  private static boolean hearsCtrlC() throws Exception {
    Optional<String> ignored;
    try (Stream<String> status = Files.lines(Path.of("/proc/self/status"))) {
      ignored = status.filter(line -> line.startsWith("SigIgn:")).findFirst();
    }
    return ignored.isEmpty()
        || (Long.parseUnsignedLong(ignored.get().split("\\s+")[1], 16) & SIGINT_BIT) == 0;
  }

  private static void areAtWorkAndEndAtOnce(List<Shown> runs) throws Exception {
    for (Shown run : runs) {
      while (!run.showsThatItIsAtWork()) {
        assertTrue(run.process.isAlive(), run.command + " is done already: " + run.text());
        Thread.sleep(50);
      }
    }
    for (Shown run : runs) {
      assertTrue(run.process.isAlive(), run.command + " is done already: " + run.text());
      run.pressCtrlC();
    }
    for (Shown run : runs) {
      assertTrue(
          run.process.waitFor(END_S, TimeUnit.SECONDS),
          () -> run.command + " does not end: " + run.process.descendants().toList());
      assertEquals(INTERRUPTED, run.process.exitValue(), run.command + run.text());
      assertFalse(run.text().contains("\tat "), run.command + run.text());
    }
  }

  private Shown start(String command) throws Exception {
    Path screen = Files.createTempFile(folder, "screen", "");
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String whole = "'" + java + "' -jar '" + PackedJar.FILE + "' " + command;
    ProcessBuilder script =
        new ProcessBuilder("script", "-qefc", whole, "/dev/null")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(screen.toFile());
    script.environment().put("TERM", "xterm");
    script.environment().remove("JAVA_TOOL_OPTIONS");
    script.environment().remove("JDK_JAVA_OPTIONS");
    return new Shown(command, script.start(), screen);
  }

  private void writeJob() throws Exception {
    Files.writeString(
        folder.resolve("p.csv"), "flow [l/s],head [m],power [W]\n0,6,4000\n100,3,6000\n");
    StringBuilder points =
        new StringBuilder(
            """
            points:
              pond: {kind: basin, level: 0 m, area: 50 m2, overflow: 5 cm}
              t0: {kind: tee}
            """);
    StringBuilder lines = new StringBuilder("lines:\n");
    lines.append("  supply: {from: pond, to: t0" + pipe(400, "{pump: p}, {run: 5 m}"));
    StringBuilder streams = new StringBuilder("streams:\n");
    for (int i = 1; i <= TEES; i++) {
      String crest = 0.5 + 0.01 * (i * 37 % 100) + " m";
      points.append("  t" + i + ": {kind: tee}\n  f" + i + ": {kind: fall, crest: " + crest);
      points.append(", width: 0.5 m, target: 0.4 L/s}\n");
      String gauge = "{run: 3 m}, {gauge: {name: G" + i + ", elevation: 0 m}}";
      String valve = "{valve: {type: ball, open: 100 %, adjustable: yes}}, {run: 3 m .. 4 m}";
      lines.append("  w" + i + ": {from: t" + (i - 1) / 2 + ", to: t" + i + pipe(60, gauge));
      lines.append("  u" + i + ": {from: t" + i + ", to: f" + i + pipe(25, valve));
    }
    for (int i = 1; i <= STREAMS; i++) {
      streams.append("  s" + i + ": {from: f" + i + ", to: pond, reaches: [{length: 8 m,");
      streams.append(" drop: 0.3 m, width: 0.6 m, bed: cobble}]}\n");
    }
    String rest =
        """
        pumps: {p: p.csv}
        readings: [{at: f1, flow: 0.1 L/s}]
        conditions: {low: {points: {pond: {level: -1 cm}}}}
        """;
    Files.writeString(folder.resolve("large.yaml"), points.toString() + lines + streams + rest);
  }

  private static String pipe(int bore, String parts) {
    return ", pipe: {inside: " + bore + " mm, roughness: 0.01 mm}, parts: [" + parts + "]}\n";
  }
}
