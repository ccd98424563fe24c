package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a terminal shows, given by the {@code script} of util-linux: how wide, in which ink. */
@EnabledOnOs(OS.LINUX)
class ShownAtATerminalIT {
  private static final String ESCAPE = "\u001b";

  private static final String SOLVE =
      "'"
          + Path.of(System.getProperty("java.home"), "bin", "java")
          + "' -jar '"
          + PackedJar.FILE
          + "' solve ../examples/twin-falls/falls.yaml";

  /** What a shell shows; "script" gives its command a terminal. */
  private static String shown(boolean atATerminal, String command) throws Exception {
    List<String> shell =
        atATerminal
            ? List.of("script", "-qec", command, "/dev/null")
            : List.of("bash", "-c", command);
    ProcessBuilder builder = new ProcessBuilder(shell).redirectErrorStream(true);
    builder.environment().put("TERM", "xterm");
    builder.environment().remove("COLUMNS");
    builder.environment().remove("NO_COLOR");
    Process process = builder.start();
    process.getOutputStream().close();
    String all = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), all);
    return all.replace("\r\n", "\n");
  }

  @ParameterizedTest
  @CsvSource({"20, 60", "80, 80", "300, 100"})
  void followsTheWidthOfTheTerminal(int columns, int prose) throws Exception {
    String all = shown(true, "stty cols " + columns + "; " + SOLVE + " --color never");
    int longest = all.lines().mapToInt(String::length).max().orElse(0);
    assertTrue(longest <= prose && longest > prose - 20, longest + " of " + columns + "\n" + all);
    assertTrue(all.contains("2,160 gph") && all.contains("3,790 gph"), all);
  }

  @Test
  void helpFollowsItToo() throws Exception {
    String all = shown(true, "stty cols 80; " + SOLVE + " --help --color never");
    int longest =
        all.replaceAll("\u001b\\[[0-9;]*m", "").lines().mapToInt(String::length).max().orElse(0);
    assertTrue(longest <= 80 && longest > 70, longest + "\n" + all);
  }

  @Test
  void printsInColorAtATerminalUnlessThatIsRefused() throws Exception {
    assertTrue(shown(true, SOLVE).contains(ESCAPE));
    assertFalse(shown(true, "NO_COLOR=1 " + SOLVE).contains(ESCAPE));
    assertTrue(shown(true, "NO_COLOR=1 " + SOLVE + " --color always").contains(ESCAPE));
    assertFalse(shown(true, SOLVE + " --color never").contains(ESCAPE));
  }

  @Test
  void printsPlainTextIntoAPipe() throws Exception {
    assertEquals(golden(), shown(false, SOLVE));
    assertTrue(shown(false, SOLVE + " --color always").contains(ESCAPE));
  }

  /** A reader that has seen enough ends it quietly. */
  @Test
  void endsQuietlyWhereNobodyReadsOn() throws Exception {
    String end = "; test ${PIPESTATUS[0]} -eq 0 -o ${PIPESTATUS[0]} -eq 141";
    try (Stream<String> lines = golden().lines()) {
      assertEquals(
          lines.limit(1).toList(), shown(false, SOLVE + " | head -1" + end).lines().toList());
    }
  }

  private static String golden() throws IOException {
    return Files.readString(Path.of("../examples/twin-falls/solve.txt"));
  }
}
