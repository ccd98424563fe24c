package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The packed jar asks at a terminal, with a line to edit: nothing that it needs was left out. */
class AnsweredAtATerminalIT {
  /** Of util-linux: runs a command at a terminal of its own. */
  private static final Path SCRIPT = Path.of("/usr/bin/script");

  @TempDir private Path folder;

  @Test
  @Timeout(120)
  void tabCompletesAnAnswer() throws Exception {
    Assumptions.assumeTrue(Files.isExecutable(SCRIPT), "no terminal to be had");
    Path shown = folder.resolve("shown");
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    ProcessBuilder builder =
        new ProcessBuilder(
                SCRIPT.toString(),
                "-qec",
                "stty rows 24 cols 80; '" + java + "' -jar '" + PackedJar.FILE + "' new pond.yaml",
                "/dev/null")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(shown.toFile());
    builder.environment().put("TERM", "xterm");
    Process process = builder.start();
    OutputStream keys = process.getOutputStream();
    await("[us] ", shown, process);
    press("\r", keys);
    await("[fall] ", shown, process);
    press("res\t\r", keys);
    while (!process.waitFor(100, TimeUnit.MILLISECONDS)) {
      press("\r", keys);
    }
    String all = Files.readString(shown);
    assertEquals(0, process.exitValue(), all);
    assertTrue(Files.readString(folder.resolve("pond.yaml")).contains("voids: 40 %"), all);
  }

  private static void press(String text, OutputStream keys) throws IOException {
    try {
      keys.write(text.getBytes(StandardCharsets.UTF_8));
      keys.flush();
    } catch (IOException ended) {
      // it has ended meanwhile, which is what is waited for
    }
  }

  private static void await(String text, Path shown, Process process) throws Exception {
    while (!Files.readString(shown).contains(text)) {
      assertTrue(process.isAlive(), Files.readString(shown));
      Thread.sleep(50);
    }
  }
}
